package slackwater.simulator.report;

/** The page's style sheet. Sizes of text are at least 12 pixels; print is black on white. */
final class PageStyle {
    private static final String RULES = """
            *{box-sizing:border-box}
            body{margin:0 auto;max-width:1400px;padding:16px 20px 40px;background:var(--ground);color:var(--text);
            font:15px/1.45 "DejaVu Sans","Liberation Sans",Verdana,sans-serif}
            h1{font-size:26px;margin:8px 0 2px;font-weight:600}
            h2{font-size:19px;margin:30px 0 8px;font-weight:600}
            p{margin:4px 0}
            .quiet{color:var(--quiet)}
            .verdict{font-size:18px;margin:14px 0 18px;padding:10px 14px;border:1px solid var(--quiet);border-radius:6px}
            .verdict.bad{border:2px solid var(--violation);color:var(--violation);font-weight:600}
            .tables{columns:3 380px;column-gap:40px}
            .tables table{break-inside:avoid;margin-bottom:18px}
            table{border-collapse:collapse;width:100%;margin:0 0 12px}
            caption{text-align:left;font-weight:600;padding:4px 0;border-bottom:1px solid var(--quiet)}
            th,td{text-align:left;font-weight:400;padding:3px 8px 3px 0;vertical-align:top;
            border-bottom:1px solid var(--hair);overflow-wrap:anywhere}
            td.number{text-align:right;white-space:nowrap;font-variant-numeric:tabular-nums;padding-right:0}
            th.fixed,td.fixed{white-space:nowrap;padding-right:16px}
            .bad-word{color:var(--violation);font-weight:600}
            .refused-word{color:var(--refusal)}
            .scroll{overflow-x:auto}
            .legend{display:flex;flex-wrap:wrap;gap:2px 26px;margin:6px 0 10px}
            .legend span{display:inline-flex;align-items:center;gap:8px}
            details{border-top:1px solid var(--hair);padding:6px 0}
            summary{cursor:pointer;padding:8px 0;font-size:16px}
            summary:focus-visible{outline:2px solid var(--text);outline-offset:2px}
            .digest{font-family:"DejaVu Sans Mono",monospace;font-size:13px;overflow-wrap:anywhere}
            svg{display:block;background:var(--ground)}
            .verdict svg{display:inline-block;vertical-align:-3px;width:28px}
            svg text{font:13px "DejaVu Sans","Liberation Sans",Verdana,sans-serif;fill:var(--text)}
            svg text.sort,svg text.tick,svg text.word,svg text.count{font-size:12px}
            svg text.sort,svg text.tick{fill:var(--quiet)}
            svg text.tick{text-anchor:middle}
            svg text.group{font-size:16px;font-weight:600}
            svg text.count{text-anchor:middle;font-weight:600;paint-order:stroke;stroke:var(--ground);stroke-width:5px;
            stroke-linejoin:round}
            svg text.says-violation{font-size:12px;font-weight:600;fill:var(--violation)}
            svg text.says-refusal{font-size:12px;fill:var(--refusal)}
            .rule,.base{stroke:var(--hair);fill:none}
            .pin{fill:var(--shape)}
            .input{fill:none;stroke:var(--shape)}
            .pin.several,.input.several{fill:url(#several);stroke:var(--shape)}
            .cue{fill:none;stroke:var(--shape);stroke-width:5;stroke-linecap:round}
            .cue.several{stroke-dasharray:3 7}
            .mode{fill:none;stroke:var(--shape)}
            .gauge{fill:none;stroke:var(--shape);stroke-width:1.5;stroke-linejoin:round}
            .limit{fill:none;stroke:var(--violation);stroke-width:1;stroke-dasharray:2 4}
            path.violation{fill:var(--violation)}
            path.refusal{fill:var(--ground);stroke:var(--refusal);stroke-width:1.5}
            .stripe{stroke:var(--shape);stroke-width:2}
            .shared{position:absolute}
            @media print{body{max-width:none;padding:0}.scroll{overflow:visible}svg{width:100%;height:auto}
            details,table{break-inside:avoid}}
            """;

    private PageStyle() {}

    static String css() {
        return ":root{color-scheme:light dark;" + PageColours.LIGHT.css() + "}\n"
                + "@media screen and (prefers-color-scheme:dark){:root{" + PageColours.DARK.css() + "}}\n" + RULES;
    }
}
