// Package record answers what the record of one serial says to whoever takes the harness over: what was
// tested and what it read, who built and who inspected, what was measured beside the sheet, what differs
// and who decided so, out of which lots, what it weighs, how long each kind of step took, and what is
// still open. It judges nothing anew: limits and results are those of contralay/calc/query/run.
//
// A certificate may be printed where Open is empty. Whatever is not known is unset or "", never 0.
package record
