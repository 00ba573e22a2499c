namespace Explain.Cli;

/// <summary>Solves the files of one command line, one after the other, in their order.</summary>
internal sealed class Batch(SolveOptions options, Streams streams)
{
    private readonly Solver solver = new();
    private readonly Renderer renderer = new(options.Page);
    private readonly Target target = new(options, streams.Out);

    /// <summary>Solves all files; a fault in one does not stop the others.</summary>
    public ExitCode Run(CancellationToken cancel)
    {
        ExitCode worst = ExitCode.Solved;
        foreach (string file in options.Files)
        {
            if (cancel.IsCancellationRequested) return ExitCode.Cancelled;
            ExitCode code = Guarded(file);
            if (code > worst) worst = code;
        }

        if (cancel.IsCancellationRequested) return ExitCode.Cancelled;
        return Ended(worst);
    }

    /// <summary>A failed verification outranks all; a file that cannot be used outranks one that is at fault.</summary>
    private ExitCode Ended(ExitCode worst) => worst switch
    {
        ExitCode.Unusable when verificationFailed => ExitCode.Unverified,
        ExitCode.AtFault when options.Files.Length > 1 => ExitCode.SomeFailed,
        _ => worst,
    };

    private bool verificationFailed;

    private ExitCode Guarded(string file)
    {
        try
        {
            return One(file);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            streams.Error.WriteLine($"{file}: {fault.Message}");
            return ExitCode.Unusable;
        }
        catch (Exception fault)
        {
            streams.Error.WriteLine($"{file}: a fault of this program; please report it. {(options.Debug ? fault.ToString() : fault.Message)}");
            verificationFailed = true;
            return ExitCode.Unverified;
        }
    }

    private ExitCode One(string file)
    {
        Problem problem = Source.Read(file, streams.In);
        SolveResult result = solver.Solve(problem);
        Report report = new(file, renderer, streams.Error);
        if (options.Format == Format.Json) target.Write(file, AnswersJson.Write(file, result, renderer));
        switch (result)
        {
            case Solved solved:
                if (options.Format != Format.Json) target.Write(file, renderer.Render(solved.Solution, options.Form, Notation));
                report.Warnings(solved.Solution);
                return ExitCode.Solved;
            case Refused refused:
                report.Errors(refused);
                return ExitCode.AtFault;
            default:
                report.Findings((Failed)result);
                verificationFailed = true;
                return ExitCode.Unverified;
        }
    }

    private Output Notation => options.Format == Format.Latex ? Output.Latex : Output.Markdown;
}
