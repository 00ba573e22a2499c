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
        HashSet<ExitCode> codes = [];
        foreach (string file in options.Files)
        {
            if (cancel.IsCancellationRequested) return ExitCode.Cancelled;
            codes.Add(Guarded(file, cancel));
            if (codes.Contains(ExitCode.Cancelled)) return ExitCode.Cancelled;
        }

        return Ended(codes);
    }

    /// <summary>A failed verification outranks all; a file that cannot be used outranks one that is at fault.</summary>
    private ExitCode Ended(HashSet<ExitCode> codes) =>
        codes.Contains(ExitCode.Unverified) ? ExitCode.Unverified
        : codes.Contains(ExitCode.Unusable) ? ExitCode.Unusable
        : !codes.Contains(ExitCode.AtFault) ? ExitCode.Solved
        : options.Files.Length > 1 ? ExitCode.SomeFailed : ExitCode.AtFault;

    private ExitCode Guarded(string file, CancellationToken cancel)
    {
        try
        {
            return One(file, cancel);
        }
        catch (OperationCanceledException)
        {
            return ExitCode.Cancelled;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            streams.Error.WriteLine($"{file}: {fault.Message}");
            return ExitCode.Unusable;
        }
        catch (PrintAuditException audit)
        {
            new Report(file, renderer, streams.Error).Findings(audit);
            return ExitCode.Unverified;
        }
        catch (Exception fault)
        {
            streams.Error.WriteLine($"{file}: a fault of this program; please report it. {(options.Debug ? fault.ToString() : fault.Message)}");
            return ExitCode.Unverified;
        }
    }

    private ExitCode One(string file, CancellationToken cancel)
    {
        Problem problem = Source.Read(file, streams.In);
        SolveResult result = solver.Solve(problem, cancel);
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
                    return ExitCode.Unverified;
        }
    }

    private Output Notation => options.Format == Format.Latex ? Output.Latex : Output.Markdown;
}
