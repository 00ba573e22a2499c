namespace Explain.Cli;

/// <summary>Solves the files of one command line, one after the other, in their order.</summary>
internal sealed class Batch(SolveOptions options, Streams streams, Solver solver)
{
    private readonly Renderer renderer = new(options.Page);
    private readonly Target target = new(options, streams.Out);

    /// <summary>Solves all files; a fault in one does not stop the others. A batch of two or more ends with a summary.</summary>
    public ExitCode Run(CancellationToken cancel)
    {
        List<Ending> ends = [];
        try
        {
            foreach (string file in options.Files)
            {
                cancel.ThrowIfCancellationRequested();
                ends.Add(Guarded(file, cancel));
            }
        }
        catch (OperationCanceledException)
        {
            streams.Error.WriteLine("Cancelled.");
        }

        if (options.Files.Length > 1 && ends.Count > 0) Summary.Write(ends, options.Files.Length, streams.Error);
        return ends.Count < options.Files.Length ? ExitCode.Cancelled : Ended([.. ends.Select(e => e.Code)]);
    }

    /// <summary>A failed verification outranks all; a file that cannot be used outranks one that is at fault.</summary>
    private ExitCode Ended(HashSet<ExitCode> codes) =>
        codes.Contains(ExitCode.Unverified) ? ExitCode.Unverified
        : codes.Contains(ExitCode.Unusable) ? ExitCode.Unusable
        : !codes.Contains(ExitCode.AtFault) ? ExitCode.Solved
        : options.Files.Length > 1 ? ExitCode.SomeFailed : ExitCode.AtFault;

    private Ending Guarded(string file, CancellationToken cancel)
    {
        try
        {
            return One(file, cancel);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            streams.Error.WriteLine($"{file}: {fault.Message}");
            return new(file, "", ExitCode.Unusable);
        }
        catch (PrintAuditException audit)
        {
            new Report(file, renderer, streams.Error).Findings(audit);
            return new(file, "", ExitCode.Unverified);
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            streams.Error.WriteLine($"{file}: a fault of this program; please report it. {(options.Debug ? fault.ToString() : fault.Message)}");
            return new(file, "", ExitCode.Unverified);
        }
    }

    private Ending One(string file, CancellationToken cancel)
    {
        Problem problem = Source.Read(file, streams.In);
        SolveResult result = solver.Solve(problem, cancel);
        Report report = new(file, renderer, streams.Error);
        Ending solved = new(file, problem.Title ?? "", ExitCode.Solved);
        if (options.Format == Format.Json) target.Write(file, AnswersJson.Write(file, result, renderer));
        switch (result)
        {
            case Solved { Solution: var solution }:
                if (options.Format != Format.Json) target.Write(file, renderer.Render(solution, options.Form, Notation));
                report.Warnings(solution);
                return solved;
            case Refused refused:
                report.Errors(refused);
                return solved with { Code = ExitCode.AtFault, Why = refused.Errors[0].Code };
            default:
                report.Findings((Failed)result);
                return solved with { Code = ExitCode.Unverified };
        }
    }

    private Output Notation => options.Format == Format.Latex ? Output.Latex : Output.Markdown;
}
