// Every test here runs real programs in real terminals; side by side they would only slow each other past their limits.
[assembly: CollectionBehavior(DisableTestParallelization = true)]
