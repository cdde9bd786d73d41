"use server";
import { receive } from "#application/stock/innocent-delivery";

export const act = receive;
