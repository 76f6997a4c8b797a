// Package partmark makes tables of lines without headings that one mark parts in cells, line by line the same way, whatever mark it is.
//
//	1/white/left tail lamp/1.5                 red ~ pin 1 ~ supply ~ 2,5
//	2/green/right tail lamp/1.5                black ~ pin 2 ~ earth ~ 2,5
//	3/empty                                    yellow ~ pin 3 ~ pump ~ 1,5 ~ to M3 pin 1
//
// The mark is found by how evenly it parts the lines, and what the cells are by all lines together (package toldcells).
package partmark
