package shape

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
)

// Columns are the columns of a table by its headings alone, none of them given a side yet; wide is how
// many cells its longest row has. What nobody knows is kept as text.
func (h Headings) Columns(head []table.Row, wide int) (cols []Column, lang string) {
	switch len(head) {
	case 0:
	case 1:
		cols, lang, _ = h.meanings(head[0])
		h.misspelt(cols)
		h.sidesByWord(cols)
		fuseFeeds(cols)
	default:
		first, _, known := h.header(head[0])
		if !known {
			first, _, _ = h.meanings(head[0])
		}
		_, lang, _ = h.meanings(head[1])
		cols = h.under(first, head[1])
		h.ofEnds(cols, head)
	}
	for len(cols) < wide {
		if len(head) > 0 {
			break // a cell without heading is told
		}
		cols = append(cols, Column{Field: name.FieldKeep})
	}
	if h.Recipe == nil {
		return cols, lang
	}
	for key, f := range h.Recipe.Columns {
		k := columnNumber(key)
		if k == 0 {
			continue
		}
		for len(cols) < k {
			cols = append(cols, Column{Field: name.FieldKeep})
		}
		cols[k-1].Field, cols[k-1].Given = f, true
	}
	return cols, lang
}

// under gives the columns of a second header row the side that the first row says.
func (h Headings) under(groups []Column, r table.Row) []Column {
	raw, _, _ := h.meanings(r)
	side := name.Field("")
	for i := range raw {
		if i < len(groups) && groups[i].Head != "" {
			side = groups[i].Field
		}
		if raw[i].Head != "" && !raw[i].known && i < len(groups) && groups[i].known {
			joined := Column{Head: groups[i].Head + " " + raw[i].Head} // "Length" above "mm", "Twisted" above "with"
			if m, ok := h.mean(joined.Head, &joined); ok && m.Field == groups[i].Field {
				joined.Field, joined.known = m.Field, true
				raw[i] = joined
			}
		}
		switch {
		case raw[i].Field == name.FieldConnector && side != "":
			raw[i].Field = side
		case raw[i].Field == name.FieldPin && side == name.FieldFrom:
			raw[i].Field = name.FieldFromPin
		case raw[i].Field == name.FieldPin && side == name.FieldTo:
			raw[i].Field = name.FieldToPin
		case raw[i].Field == name.FieldNumber:
			raw[i].Field = name.FieldWire
		case (raw[i].Field == name.FieldKeep || raw[i].Field == name.FieldSignal) && raw[i].Head != "" &&
			(side == name.FieldFrom || side == name.FieldTo) &&
			i+1 < len(raw) && raw[i+1].Field == name.FieldPin:
			raw[i].Field = side // "Place" below "From", before its pin
		}
	}
	for i, g := range groups { // what the second row leaves empty, the first says
		for len(raw) <= i {
			raw = append(raw, Column{Field: name.FieldKeep})
		}
		if raw[i].Head == "" && g.Head != "" && g.Field != name.FieldFrom && g.Field != name.FieldTo {
			raw[i] = g
		}
	}
	return raw
}

// ofEnds gives the columns of a second row of headings what they are of the end above them.
func (h Headings) ofEnds(cols []Column, head []table.Row) {
	for i, p := range sidehead.Parts(head[0], head[1], h.Words) {
		c := &cols[i]
		of := []name.Field{name.FieldKeep, name.FieldFrom, name.FieldTo}[p.End]
		switch {
		case c.Given || p.What == sidehead.Other:
		case p.What == sidehead.Fitting:
			c.Field, c.OfEnd = name.FieldKeep, p.Head
		case p.What == sidehead.Cavity:
			c.Field, c.known = of+" pin", true
			if p.Own {
				c.Of, c.Headed = p.Head, true
			}
		default:
			c.Field, c.known = of, true
		}
	}
}

// columnNumber reads "#3" as 3; 0 for a heading.
func columnNumber(head string) int {
	digits, ok := strings.CutPrefix(head, "#")
	if !ok || digits == "" || len(digits) > 3 || strings.Trim(digits, "0123456789") != "" {
		return 0
	}
	n := 0
	for _, d := range []byte(digits) {
		n = 10*n + int(d-'0')
	}
	return n
}

// Clone is a copy that shares nothing that is changed.
func (b *Block) Clone() *Block {
	c := *b
	c.Cols = slices.Clone(b.Cols)
	return &c
}
