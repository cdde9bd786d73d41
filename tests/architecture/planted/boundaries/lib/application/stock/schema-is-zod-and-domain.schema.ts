import { mail } from "#adapters/mail/innocent-mail";

export const schema = mail;
