/** Any text made fit for XML 1.0, inside an element or an attribute in double quotes. */

// XML 1.0, section 2.2: of the control characters only tab and line ends are allowed, and neither half characters nor FFFE, FFFF.
const FORBIDDEN = /[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu;

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

export function escapeXml(text: string): string {
  return text.replace(FORBIDDEN, "").replace(/[&<>"']/gu, (sign) => entities[sign] ?? sign);
}
