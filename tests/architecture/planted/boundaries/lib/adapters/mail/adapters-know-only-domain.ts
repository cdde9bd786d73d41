import { receive } from "#application/stock/innocent-delivery";

export const mailer = receive;
