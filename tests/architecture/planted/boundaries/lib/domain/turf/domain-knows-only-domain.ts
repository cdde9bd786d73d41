import { type delivery } from "#application/stock/innocent-delivery.schema";

export type Delivery = typeof delivery;
