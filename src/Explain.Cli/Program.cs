using Explain.Cli;

return await Application.Run(args, new Streams(Streams.StandardInput(), Streams.StandardOutput(), Streams.StandardError()));
