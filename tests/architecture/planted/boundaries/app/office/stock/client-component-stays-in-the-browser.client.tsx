"use client";
import { receive } from "#application/stock/innocent-delivery";

export const clientForm = receive;
