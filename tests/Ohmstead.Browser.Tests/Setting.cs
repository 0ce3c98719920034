using Ohmstead.Browser.Tests;
using Xunit.Sdk;
using Xunit.v3;

// One browser, opened once; tests one after another, and inside a test a window for each core.
[assembly: AssemblyFixture(typeof(ReportFixture))]
[assembly: Parallelization(Mode = ParallelMode.None)]
