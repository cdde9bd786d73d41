import { mail } from "#adapters/mail/innocent-mail";

export const screen = mail;
