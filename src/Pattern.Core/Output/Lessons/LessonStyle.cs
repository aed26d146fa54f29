namespace Pattern.Core.Output;

/// <summary>How a lesson looks on a screen, on a phone and on paper. Black on white: a copier has no colours.</summary>
internal static class LessonStyle
{
    internal const string Text = """
        :root { color-scheme: light; }
        body { margin: 0 auto; max-width: 60rem; padding: 1rem; background: #fff; color: #000; font: 1rem/1.45 Inter, Helvetica, Arial, "Liberation Sans", sans-serif; }
        h1 { font-size: 1.6rem; line-height: 1.2; margin: 0 0 .25rem; overflow-wrap: anywhere; }
        h2 { font-size: 1.25rem; margin: 2rem 0 .5rem; break-after: avoid; }
        h3 { font-size: 1rem; margin: 0 0 .25rem; }
        p { margin: .25rem 0; overflow-wrap: anywhere; }
        a { color: inherit; }
        nav { margin: .75rem 0; overflow-wrap: anywhere; }
        nav a { display: inline-block; padding: .25rem .35rem; }
        table { border-collapse: collapse; width: 100%; }
        th, td { border-bottom: 1px solid #000; padding: .3rem .75rem .3rem 0; text-align: left; vertical-align: top; font-weight: normal; overflow-wrap: anywhere; }
        thead th { font-weight: bold; }
        tbody th { width: 38%; }
        .fill { display: flex; gap: 2rem; margin: 1rem 0; }
        .fill span { flex: 1; border-bottom: 1px solid #000; padding-top: 1rem; }
        .lines { position: absolute; }
        .step { display: grid; grid-template-columns: 17rem 1fr; gap: 0 1.25rem; align-items: start; border-top: 1px solid #000; padding: .75rem 0; break-inside: avoid; scroll-margin-top: 1rem; }
        .step svg, .finished svg { display: block; width: 100%; height: auto; max-height: 19rem; }
        .old { fill: none; stroke: #777; stroke-width: .75; }
        .new { fill: none; stroke: #000; stroke-width: 3; stroke-linecap: round; }
        .seam { fill: none; stroke: #000; stroke-width: 1.75; stroke-linejoin: round; }
        .dart { fill: none; stroke: #000; stroke-width: 1; }
        .level { fill: none; stroke: #000; stroke-width: .75; stroke-dasharray: 4 3; }
        .body { fill: none; stroke: #000; stroke-width: 1; }
        .tape { fill: none; stroke: #000; stroke-width: 3; stroke-linecap: round; }
        .leader { fill: none; stroke: #000; stroke-width: .75; }
        circle { stroke: #000; stroke-width: .35; }
        .marked { fill: #000; }
        .from { fill: #fff; }
        svg text { fill: #000; stroke: #fff; stroke-width: .8; stroke-linejoin: round; paint-order: stroke; }
        .measure { font-size: 1.9rem; line-height: 1.2; font-weight: bold; margin: .5rem 0; }
        .measure small { display: block; font-size: .9rem; font-weight: normal; }
        .why { border-left: 3px solid #000; padding-left: .5rem; font-style: italic; }
        .blank { display: inline-block; min-width: 4.5rem; border-bottom: 1.5px solid #000; height: 1.1em; vertical-align: baseline; }
        .hidden { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
        .finished { break-inside: avoid; }
        .finished svg { max-width: 34rem; max-height: 40rem; }
        .cautions { border: 2px solid #000; padding: .5rem .75rem; margin-top: 2rem; break-inside: avoid; }
        .cautions h2 { margin-top: 0; }
        @media (max-width: 40rem) { .step { grid-template-columns: 1fr; } .step svg { max-height: 16rem; margin-bottom: .5rem; } }
        @page { margin: 14mm; }
        @media print {
          body { max-width: none; padding: 0; font-size: 10pt; }
          nav { display: none; }
          .step { grid-template-columns: 62mm 1fr; padding: 2.5mm 0; }
          .step svg { max-height: 56mm; margin: 0; }
          .finished svg { max-width: 150mm; max-height: 150mm; }
          .measure { font-size: 18pt; margin: 1.5mm 0; }
          tr { break-inside: avoid; }
        }
        """;
}
