package org.groundline.bench;

import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.Warmup;

/// Loading when the program has been compiled by use: what the code costs.
@BenchmarkMode(Mode.AverageTime)
@Fork(1)
@Warmup(iterations = 6, time = 5)
@Measurement(iterations = 5, time = 5)
public class LoadingBenchmark extends LargeBankLoading {}
