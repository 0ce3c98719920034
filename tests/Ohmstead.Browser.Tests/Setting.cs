using Ohmstead.Browser.Tests;

// One browser, opened once; pages one after another, so that a slow machine does not run into time limits.
[assembly: AssemblyFixture(typeof(ReportFixture))]
[assembly: CollectionBehavior(DisableTestParallelization = true)]
