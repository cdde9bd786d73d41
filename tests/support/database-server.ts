export default function(){}
