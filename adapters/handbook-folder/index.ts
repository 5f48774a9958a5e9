// The front door of the handbook folder: a folder on disk becomes files, or a sound handbook.
export { schemaLine, writeEditorFiles } from "./editor-files.ts";
export { loadHandbookFolder } from "./load-handbook-folder.ts";
export type { FolderReading } from "./read-handbook-folder.ts";
export { readHandbookFolder } from "./read-handbook-folder.ts";
export { type FolderWatch, usualPace, type WatchPace, watchFolder } from "./watch-folder.ts";
export { writeHandbookFiles } from "./write-handbook-files.ts";
