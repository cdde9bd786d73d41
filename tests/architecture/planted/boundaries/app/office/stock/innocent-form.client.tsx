"use client";
import { delivery } from "#application/stock/innocent-delivery.schema";
import { button } from "#ui/innocent-button";
import { act } from "./action";

export const form = { delivery, button, act };
