import { mail } from "#adapters/mail/innocent-mail";
import { delivery } from "./innocent-delivery.schema";

export const receive = { mail, delivery };
