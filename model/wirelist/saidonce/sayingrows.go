package saidonce

import (
	"iter"
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// isMet reports whether some row of some tables is one that a sentence names, and not every one is.
func isMet(words []string, blocks []*shape.Block) bool {
	met, rows := 0, 0
	for b, r := range rowsOf(blocks) {
		if rows++; isNamed(words, b, r.Cells) {
			met++
		}
	}
	return met > 0 && met < rows
}

// meansSame reports whether a name of one word means the same rows alone and with the front of the name before it: "the pump feed and
// return" is the return of the pump, where another has one too that is not meant.
func meansSame(before, words []string, blocks []*shape.Block) bool {
	if len(words) > 1 || len(before) < 2 {
		return true
	}
	whole := append(slices.Clone(before[:len(before)-1]), words...)
	some, differ := false, false
	for b, r := range rowsOf(blocks) {
		with := isNamed(whole, b, r.Cells)
		some, differ = some || with, differ || with != isNamed(words, b, r.Cells)
	}
	return !some || !differ
}

// rowsOf yields the rows of some tables that are no text.
func rowsOf(blocks []*shape.Block) iter.Seq2[*shape.Block, table.Row] {
	return func(yield func(*shape.Block, table.Row) bool) {
		for _, b := range blocks {
			for _, r := range b.Rows {
				if !shape.IsText(r) && !yield(b, r) {
					return
				}
			}
		}
	}
}

// otherOf is what a sentence says of a row that it names, by the longest name of several, and of two as long by a word for the ground; nil
// for a row that it does not name. clear is false where two names as long would do.
func otherOf(d *draft.Default, b *shape.Block, cells []string) (of *draft.Exception, clear bool) {
	rank := func(e *draft.Exception) int {
		n := 2 * len(e.Words)
		if isGroundWord(e.Words[len(e.Words)-1]) {
			n++
		}
		return n
	}
	clear = true
	for k := range d.Others {
		e := &d.Others[k]
		if !isNamed(e.Words, b, cells) {
			continue
		}
		if of != nil && rank(e) == rank(of) && !slices.Equal(e.Words, of.Words) {
			clear = false
		}
		if of == nil || rank(e) > rank(of) {
			of, clear = e, true
		}
	}
	return of, clear
}

// isNamed reports whether the name of a wire, or else an end of it, has every word of a name.
func isNamed(words []string, b *shape.Block, cells []string) bool {
	fields := []name.Field{name.FieldSignal, name.FieldTo, name.FieldFrom, name.FieldRun}
	if isGroundWord(words[len(words)-1]) {
		fields = fields[:1] // what ends at a ground stud may be a signal
	}
	return slices.ContainsFunc(fields, func(f name.Field) bool {
		cell := b.Cell(cells, f)
		if cell == "" {
			return false
		}
		all := name.Words(table.Fold(cell))
		return !slices.ContainsFunc(words, func(w string) bool { return !names(all, w) })
	})
}

// names reports whether some words have one of a name. A word for the ground is the last of the name of a net, before a number or a letter
// alone: "ground speed" is none. Any other word for it means the same.
func names(all []string, w string) bool {
	if !isGroundWord(w) {
		return hasWord(all, w)
	}
	for len(all) > 1 && (len(all[len(all)-1]) == 1 || strings.Trim(all[len(all)-1], "0123456789") == "") {
		all = all[:len(all)-1]
	}
	return len(all) > 0 && isGroundWord(singular(strings.TrimRight(all[len(all)-1], "0123456789")))
}

// isGroundWord reports whether a folded word is one for a ground. Common words, no source.
func isGroundWord(w string) bool {
	switch w {
	case "ground", "gnd", "earth", "masse", "massen", "erde", "terre", "tierra", "massa", "masa", "terra", "jord", "aarde", "zem",
		"kostra", "maa":
		return true
	}
	return false
}
