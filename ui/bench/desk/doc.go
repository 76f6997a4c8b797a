// Package desk is what a screen may touch: the harness, its sheet, the branch in hand, undo,
// and the pages, rows and fields that screens are made of.
package desk
