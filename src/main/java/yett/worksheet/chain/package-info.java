/** Calculations about the roller chain, how it hangs, wears and runs. */
package yett.worksheet.chain;
