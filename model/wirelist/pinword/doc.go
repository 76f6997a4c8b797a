// Package pinword holds the words for a cavity that stand before its name in the tongues of lists: "pin 3", "ben 3", "stift 3".
//
// It knows words alone, folded; other packages say what stands behind them.
package pinword
