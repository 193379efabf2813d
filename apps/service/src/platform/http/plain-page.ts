/** A page that needs no script: for where a browser stands by itself, without the web app. */
export interface PlainPage {
  readonly title: string;
  readonly lines: readonly string[];
  readonly links: readonly { readonly to: string; readonly text: string }[];
  /** Where the browser goes on to at once. */
  readonly goOnTo?: string;
}

const SIGNS: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

const escaped = (text: string): string => text.replace(/[&<>"']/g, (sign) => SIGNS[sign] as string);

/** Writes the page as HTML. Nothing that is told to it is taken for markup. */
export const plainPage = ({ title, lines, links, goOnTo }: PlainPage): string => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
${goOnTo === undefined ? '' : `<meta http-equiv="refresh" content="0; url=${escaped(goOnTo)}">\n`}<title>${escaped(title)} - Hull Record</title>
<link rel="stylesheet" href="/tokens.css">
<link rel="stylesheet" href="/base.css">
</head>
<body>
<main>
<h1>${escaped(title)}</h1>
${lines.map((line) => `<p>${escaped(line)}</p>`).join('\n')}
${links.map(({ to, text }) => `<p><a href="${escaped(to)}">${escaped(text)}</a></p>`).join('\n')}
</main>
</body>
</html>
`;
