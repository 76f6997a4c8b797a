// Package grouphead reads what a heading above some rows of a list says of all of them: where they begin, where they go.
package grouphead

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// Near is the near end of the rows below a heading, in a table that says the far ends alone: what stands above a group of
// them is where they all begin. "" where the heading names no such thing.
//
//	SPL2 - sensor ground
//	Wire | To         | Pin
//	S201 | Controller | 13
func Near(b *shape.Block, heading string) string {
	if !b.Has(name.FieldTo) || b.Has(name.FieldFrom, name.FieldFromPin, name.FieldRun, name.FieldPin, name.FieldConnector, name.FieldVia,
		name.FieldDevicePin) {
		return ""
	}
	first, _, _ := strings.Cut(heading, " ")
	switch first = strings.TrimRight(first, ":,;-"); {
	case name.IsDesignator(first) || name.IsSpliceName(first):
		return first
	case name.IsSpliceName(heading) || name.SaysConnector(heading) && !name.IsGeneric(heading):
		return name.ConnectorName(heading)
	}
	return ""
}

// Far is the far end of the rows below a heading, in a table that says where its wires start and not where they go: "Returns to
// bus NB1", "Masseleitungen an X9". "" where the heading names none.
func Far(b *shape.Block, heading string) string {
	if !b.Has(name.FieldFrom) || b.Has(name.FieldTo, name.FieldToPin, name.FieldRun, name.FieldPin, name.FieldConnector, name.FieldVia,
		name.FieldDevicePin) {
		return ""
	}
	w := strings.Fields(heading)
	for i := 1; i+1 < len(w) && i < 4; i++ {
		if words.GoesTo(table.Fold(w[i])) && slices.ContainsFunc(w[:i], func(s string) bool { return words.IsWires(table.Fold(s)) }) {
			return placeOf(w[i+1:])
		}
	}
	return ""
}

// placeOf is the place that some words at the end of a heading name: a designator beside a word for what it is, or the few words
// there are; "" of more.
func placeOf(w []string) string {
	for len(w) > 1 && words.IsArticle(table.Fold(w[0])) {
		w = w[1:]
	}
	last := strings.TrimRight(w[len(w)-1], ".:")
	switch first := w[0]; {
	case len(w) > 3 || slices.ContainsFunc(w, func(s string) bool { return words.IsPaper(strings.TrimRight(table.Fold(s), ".:")) }):
		return ""
	case name.IsDesignator(last) || name.IsSpliceName(last):
		return last
	case name.IsDesignator(first):
		return first
	}
	return strings.TrimRight(strings.Join(w, " "), ".:")
}
