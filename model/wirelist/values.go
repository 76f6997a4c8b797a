package wirelist

import (
	"fmt"
	"strings"
	"unicode"

	"contralay/model"
)

// values reads gauge, spec, colour, length, current and fuse of one row.
func (im *importer) values(b *block, cells []string, it *item, column func(int) Place) {
	v := valueReader{im, b, cells, it, column}
	v.size()
	v.colour()
	v.length()
	v.current()
	if cell, _ := b.cellAt(cells, FieldFuse); cell != "" && !isNothing(cell) && !isNone(cell) {
		im.fuseCell(b, cell, it)
	}
}

// valueReader reads the values of one row into its item.
type valueReader struct {
	im     *importer
	b      *block
	cells  []string
	it     *item
	column func(int) Place
}

// keep leaves what is not understood as text.
func (v *valueReader) keep(rule, what, cell string, col int) {
	level := Warn
	if rule == "no "+what {
		level = Note
	}
	if rule == "no colour" || rule == "shade that no code has" {
		level, rule = Note, "colour that no code has"
	}
	v.it.notes = append(v.it.notes, what+": "+cell)
	v.im.say(level, rule, v.column(col), fmt.Sprintf("%q", cell), "kept in the note")
}

// cell is the text of a field, "" where a dash fills it.
func (v *valueReader) cell(f Field) (string, int) {
	cell, col := v.b.cellAt(v.cells, f)
	if isNothing(cell) || f != FieldFuse && isNone(cell) {
		return "", col
	}
	if at := v.b.cols[col].measured; at > 0 && at < len(v.cells) && strings.IndexFunc(cell, unicode.IsLetter) < 0 {
		cell = joinNonEmpty(" ", cell, v.cells[at]) // 1200 | mm
	}
	return cell, col
}

// size reads the columns of the specification and of the gauge.
func (v *valueReader) size() {
	b, it := v.b, v.it
	if cell := b.cell(v.cells, FieldSpec); cell != "" {
		if g, rest := cutSpec(cell); g.Spec != "" && rest == "" {
			it.gauge = g
		} else if more, ok := ParseGauge(cell, BareAWG, b.mark); ok && (more.Spec != "" || isCable(more) && !drainWord(fold(cell)) || more.Size != "" && strings.Trim(cell, "0123456789") != "") {
			it.gauge = more
		} else if drainWord(fold(cell)) && it.signal == "" {
			it.signal = cell
		} else {
			it.gauge.Spec = cell
		}
	}
	if cell, col := v.cell(FieldGauge); cell != "" {
		g, ok := ParseGauge(cell, b.cols[col].bare, b.mark)
		if !ok {
			g, ok = sizeAndColour(cell, b.cols[col].bare, b.lang, b.mark)
		}
		switch within := sizeWithin(cell, b.mark); {
		case ok && it.gauge.Size != "" && g.Size != "" && it.gauge.Size != g.Size:
			v.keep("size against part number", "size", cell, col)
		case ok:
			if g.Spec == "" {
				g.Spec = it.gauge.Spec
			}
			if g.Size == "" {
				g.Size = it.gauge.Size
			}
			if len(g.Colour) == 0 {
				g.Colour = it.gauge.Colour
			}
			if g.Conductors == 0 {
				g.Conductors = it.gauge.Conductors
			}
			g.Shielded, g.Twisted = g.Shielded || it.gauge.Shielded, g.Twisted || it.gauge.Twisted
			it.gauge = g
		case within != "" && it.gauge.Size == "":
			it.gauge.Size = within
			v.keep("more than a size", "size", cell, col)
		default:
			v.keep(v.im.wrongColumn("size", cell, b), "size", cell, col)
		}
	}
	it.colour = it.gauge.Colour
}

// colour reads the columns of the colour and of its stripe.
func (v *valueReader) colour() {
	b, it := v.b, v.it
	stripe, stripeCol := v.cell(FieldStripe)
	cell, col := v.cell(FieldColour)
	if cell == "" {
		if stripe != "" {
			v.keep("stripe without colour", "stripe", stripe, stripeCol)
		}
		return
	}
	c, ok := ParseColour(cell, b.lang)
	if !ok && it.gauge.Size == "" {
		if g, both := sizeAndColour(cell, BareAWG, b.lang, b.mark); both {
			it.gauge.Size, c, ok = g.Size, g.Colour, true
		}
	}
	whole := cell
	if stripe != "" {
		s, good := ParseColour(stripe, b.lang)
		c, ok = append(c, s...), ok && good && len(c)+len(s) <= mostHues
		whole += " / " + stripe
	}
	switch {
	case ok && len(it.colour) > 0 && !it.colour.Equal(c):
		v.keep("colour against part number", "colour", whole, col)
	case ok:
		it.colour = c
		if c.Shaded() {
			v.keep("shade that no code has", "colour", whole, col)
		}
	case stripe == "" && (stateOf(cell) == spare || stateOf(cell) == reserved):
		// A status stands where a colour belongs: stateOf of the row reads it.
	default:
		v.keep(v.im.wrongColumn("colour", cell, b), "colour", whole, col)
	}
}

func (v *valueReader) length() {
	cell, col := v.cell(FieldLength)
	if cell == "" {
		return
	}
	u := v.b.cols[col].unit
	if u == "" {
		u = v.im.opt.Unit
	}
	if mm, ok := ParseLength(cell, u, v.b.mark); ok {
		v.it.length = model.Some(mm)
	} else if mm, ok := lengthWithin(cell, u, v.b.mark); ok {
		v.it.length = model.Some(mm)
		v.it.notes = append(v.it.notes, "length: "+cell)
		v.im.say(Note, "more than a length", v.column(col), fmt.Sprintf("%q", cell), "taken as "+mmText(mm)+", the rest kept in the note")
	} else if _, bare := lengthWithin(cell, "mm", v.b.mark); bare {
		v.keep("length without unit", "length", cell, col)
	} else {
		v.keep(v.im.wrongColumn("length", cell, v.b), "length", cell, col)
	}
}

func (v *valueReader) current() {
	cell, col := v.cell(FieldCurrent)
	if cell == "" {
		return
	}
	if a, ok := ParseCurrent(cell, v.b.cols[col].milli, v.b.mark); ok {
		v.it.amps = model.Some(a)
	} else {
		v.keep(v.im.wrongColumn("current", cell, v.b), "current", cell, col)
	}
}

// isNone is a word for none, where a fuse would be named.
func isNone(cell string) bool {
	switch fold(strings.TrimSpace(cell)) {
	case "none", "no", "nil", "n/a", "na", "without", "unfused", "not fused", "keine", "kein", "ohne", "aucun", "sans", "ninguno", "sin", "nessuno", "senza":
		return true
	}
	return false
}

// isNothing: a dash that fills an empty cell.
func isNothing(cell string) bool { return strings.Trim(cell, "-–—. ") == "" }

// wrongColumn is the rule for a cell that is no such thing: it may be another.
func (im *importer) wrongColumn(what, cell string, b *block) string {
	if _, ok := ParseGauge(cell, BareAWG, b.mark); ok && what != "size" && strings.Trim(cell, "0123456789.,") != "" {
		return "a size in the column of the " + what
	}
	if _, ok := ParseColour(cell, b.lang); ok && what != "colour" && strings.Trim(cell, "0123456789-/., ") != "" {
		return "a colour in the column of the " + what
	}
	if _, ok := ParseLength(cell, "", b.mark); ok && what != "length" {
		return "a length in the column of the " + what
	}
	if _, ok := ParseCurrent(cell, false, b.mark); ok && what != "current" && strings.Trim(cell, "0123456789.,") != "" {
		return "a current in the column of the " + what
	}
	all := scan(fold(cell))
	for i := 1; i < len(all); i++ {
		if all[i-1].kind == '0' && isCount(all, i) && all[i-1].text != "1" {
			return "a cable in a list of single wires"
		}
	}
	return "no " + what
}
