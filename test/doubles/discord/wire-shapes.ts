// What travels between the double and the bot, in Discord's own field names, and only as much of it as the double keeps.

export type Json = Readonly<Record<string, unknown>>;

export interface User {
  readonly id: string;
  readonly username: string;
  readonly bot?: boolean;
}

export interface Attachment {
  readonly id: string;
  readonly filename: string;
  readonly description?: string;
  readonly size: number;
  readonly url: string;
  readonly proxy_url: string;
  readonly content_type?: string;
}

export interface Component {
  readonly type: number;
  readonly custom_id?: string;
  readonly label?: string;
  readonly style?: number;
  readonly disabled?: boolean;
  readonly placeholder?: string;
  readonly content?: string;
  readonly required?: boolean;
  readonly value?: string;
  readonly min_values?: number;
  readonly max_values?: number;
  readonly options?: readonly {
    readonly label: string;
    readonly value: string;
    readonly description?: string;
  }[];
  readonly components?: readonly Component[];
  readonly component?: Component;
}

export interface Message {
  readonly id: string;
  readonly channel_id: string;
  readonly guild_id?: string;
  readonly author: User;
  content: string;
  components: readonly Component[];
  attachments: readonly Attachment[];
  readonly mentions: readonly User[];
  flags: number;
  readonly nonce?: string;
  readonly message_reference?: Json;
  readonly referenced_message?: Json | null;
  pinned: boolean;
  edits: number;
  /** Whoever alone can see it, when only one person can. */
  readonly onlyFor?: string;
  readonly type: number;
  thread?: string;
}

export interface Channel {
  readonly id: string;
  /** 0 text, 1 direct, 11 public thread. */
  readonly type: number;
  readonly name: string;
  readonly guild_id?: string;
  readonly parent_id?: string;
  readonly recipients?: readonly User[];
  /** Permissions the bot lacks here. */
  lacking: bigint;
  archived?: boolean;
}

export interface Guild {
  readonly id: string;
  readonly name: string;
  readonly owner: string;
  readonly roles: { readonly id: string; readonly name: string; readonly permissions: bigint }[];
  readonly members: Map<string, { readonly user: User; readonly roles: string[] }>;
}

export interface Modal {
  readonly custom_id: string;
  readonly title: string;
  readonly components: readonly Component[];
}

/** One interaction as the double sees it: what was sent, and what came of it. */
export interface Interaction {
  readonly id: string;
  readonly token: string;
  readonly user: User;
  readonly channel: string;
  readonly sentAt: number;
  /** The message a button stands on. */
  readonly on?: Message;
  acknowledgedAt?: number;
  /** The callback's type: 4 to 9. */
  acknowledgedBy?: number;
  /** The message "@original" stands for. */
  original?: Message;
  modal?: Modal;
  suggestions?: readonly { readonly name: string; readonly value: string }[];
  isExpired?: boolean;
  isEphemeral?: boolean;
  /** Called whenever something came of it. */
  readonly watchers: (() => void)[];
}

export const intents = {
  guilds: 1,
  guildMessages: 1 << 9,
  directMessages: 1 << 12,
  messageContent: 1 << 15,
} as const;

export const ephemeral = 1 << 6;
