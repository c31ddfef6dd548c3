using Gaugerod.Cli;

return await CommandLine.Run(args, Works.Real, Desk.OfProcess());
