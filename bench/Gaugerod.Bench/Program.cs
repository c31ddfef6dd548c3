using BenchmarkDotNet.Running;
using Gaugerod.Bench;

if (args is ["stages", var sample]) Stages.Print(sample);
else BenchmarkSwitcher.FromAssembly(typeof(Stages).Assembly).Run(args);
