namespace Explain.Tests;
