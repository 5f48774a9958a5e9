// A message as a member reads it: without marks, with the labels of what can be pressed.
import type { Component, Message } from "../../doubles/discord/wire-shapes.ts";

/** Discord's markdown taken off. */
export function asRead(content: string): string {
  return content
    .replaceAll(/^-# /gmu, "")
    .replaceAll(/^> ?/gmu, "")
    .replaceAll(/(?<!\\)\*\*/gu, "")
    .replaceAll(/^```$/gmu, "")
    .replaceAll(/\\([\\*_~`|<#>.)(+-])/gu, "$1")
    .replaceAll("\u200b", "");
}

export function componentsOf(message: Message): readonly Component[] {
  return message.components.flatMap(({ components }) => components ?? []);
}

/** The labels of buttons and options, in the order they stand. */
export function labelsOn(message: Message): readonly string[] {
  return componentsOf(message).flatMap(({ label, options }) =>
    options === undefined
      ? (label ?? [])
      : options.map(
          (option) => option.label + (option.description === undefined ? "" : ` ${option.description}`),
        ),
  );
}
