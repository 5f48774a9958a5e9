// The front door of the spreadsheets: a file becomes sheets of plain cells, and back.
export { readSheets } from "./read-sheets.ts";
export { writeSheets } from "./write-sheets.ts";
