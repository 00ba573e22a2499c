namespace Explain.Generators.Tests;
