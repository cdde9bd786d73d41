import { receive } from "#application/stock/innocent-delivery";
import { paper } from "#domain/papers/innocent-paper";
import { form } from "./innocent-form.client";

export const page = { receive, paper, form };
