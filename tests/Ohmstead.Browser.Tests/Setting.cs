using Ohmstead.Browser.Tests;
using Xunit.Sdk;
using Xunit.v3;

// One browser, opened once; pages one after another, so that a slow machine does not run into time limits.
[assembly: AssemblyFixture(typeof(ReportFixture))]
[assembly: Parallelization(Mode = ParallelMode.None)]
