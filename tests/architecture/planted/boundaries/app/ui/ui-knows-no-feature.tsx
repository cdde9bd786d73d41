import { page } from "../office/stock/innocent-page";

export const uiOfPage = page;
