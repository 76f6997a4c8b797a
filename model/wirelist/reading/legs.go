package reading

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// standsInFew reports whether a column stands in the first row of each group alone, the channel over its legs: it holds no cavities,
// which every row has.
func (l *look) standsInFew(i int) bool { return 2*l.Prof[i].Filled < column.Data(l.Src.Rows) }

// legs takes the words that come again in each group of cavities for the names, where the table has no others: what each leg of a
// channel is.
//
//	DB15 | Ch | Leg  | Goes to
//	8    | 1  | plus | Jack 1 pin 2
//	15   |    | ret  | Jack 1 pin 3
func (l *look) legs(cols []shape.Column) {
	if l.Has(cols, name.FieldSignal, name.FieldWire, name.FieldNumber) || !l.Has(cols, name.FieldTo, name.FieldToPin) {
		return
	}
	of := -1
	for i, c := range cols {
		p := &l.Prof[i]
		w := name.Words(name.WithoutBrackets(table.Fold(c.Head)))
		if c.Given || c.Field != name.FieldKeep || p.Filled < 2 || l.standsInFew(i) {
			continue
		}
		if of >= 0 || len(w) == 0 || name.IsRemark(w) || name.IsMeasure(w) || name.IsOtherHead(c.Head) {
			return
		}
		of = i
	}
	if of < 0 {
		return
	}
	p := &l.Prof[of]
	if 5*p.Filled >= 4*column.Data(l.Src.Rows) && p.Distinct > 1 && p.Prose == 0 && p.Numbers+p.Colours+p.Sizes+p.Sized+p.Ends == 0 &&
		!slices.ContainsFunc(cols, func(c shape.Column) bool { return c.Group }) {
		cols[of].Field = name.FieldSignal
	}
	for i := range cols {
		c := &cols[i]
		if w := name.Words(table.Fold(c.Head)); of >= 0 && c.Field == name.FieldKeep && !c.Given && len(w) > 0 &&
			l.Prof[i].Filled > 0 && l.standsInFew(i) && l.Prof[i].Unique() && saysGroup(w[0]) {
			c.Carried = true
		}
	}
}

// saysGroup reports whether a folded word is for what several wires are the legs of.
func saysGroup(w string) bool {
	switch w {
	case "pair", "pairs", "group", "circuit", "paar", "gruppe", "paire", "groupe", "par", "grupo", "coppia", "gruppo", "groep":
		return true
	}
	return words.IsOutput(w)
}
