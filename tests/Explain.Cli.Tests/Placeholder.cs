namespace Explain.Cli.Tests;
