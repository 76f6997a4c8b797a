package row

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"unicode"

	"contralay/model"
	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/squareword"
	"contralay/model/wirelist/strands"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// readValues reads gauge, spec, colour, length, current and fuse of one row.
func readValues(im *draft.Importer, b *shape.Block, cells []string, it *draft.Item, column func(int) table.Place) {
	v := valueReader{im, b, cells, it, column}
	v.size()
	v.colour()
	v.length()
	v.current()
	if cell, _ := b.CellAt(cells, name.FieldFuse); cell != "" && !value.IsNothing(cell) && !isNone(cell) {
		fuseCell(im, b, cell, it)
		if fuse, col := b.CellAt(cells, name.FieldPin); it.Fuse.Set && it.FuseName == "" && col >= 0 && b.Cols[col].Fuses {
			it.FuseName = fuse
		}
	}
}

// valueReader reads the values of one row into its item.
type valueReader struct {
	im     *draft.Importer
	b      *shape.Block
	cells  []string
	it     *draft.Item
	column func(int) table.Place
}

// keep leaves what is not understood as text.
func (v *valueReader) keep(rule, what, cell string, col int) {
	level := report.Warn
	if rule == "no "+what {
		level = report.Note
	}
	if rule == "no colour" && isShortCode(cell) && !name.IsKey(cell) {
		level, rule = report.Warn, "short form of a colour that is not known"
	} else if rule == "no colour" || rule == "shade that no code has" {
		level, rule = report.Note, "colour that no code has"
	}
	v.it.Notes = append(v.it.Notes, what+": "+cell)
	v.im.Say(level, rule, v.column(col), fmt.Sprintf("%q", cell), "kept in the note")
}

// cell is the text of a field, "" where a dash fills it.
func (v *valueReader) cell(f name.Field) (string, int) {
	cell, col := v.b.CellAt(v.cells, f)
	if f == name.FieldColour && v.im.Colours[table.Fold(cell)] != "" {
		return cell, col // "no" is noir, "sin" is sininen
	}
	if value.IsNothing(cell) || f != name.FieldFuse && isNone(cell) {
		return "", col
	}
	if at := v.b.Cols[col].Measured; at > 0 && at < len(v.cells) && strings.IndexFunc(cell, unicode.IsLetter) < 0 {
		cell = value.JoinNonEmpty(" ", cell, v.cells[at]) // 1200 | mm
	}
	return cell, col
}

// size reads the columns of the specification and of the gauge.
func (v *valueReader) size() {
	b, it := v.b, v.it
	if cell := b.Cell(v.cells, name.FieldSpec); cell != "" {
		if g, rest := value.CutSpec(cell); g.Spec != "" && rest == "" {
			it.Gauge = g
		} else if more, ok := value.ParseGauge(cell, value.BareAWG, b.Mark); ok && (more.Spec != "" || more.IsCable() &&
			!name.IsDrainWord(table.Fold(cell)) || more.Size != "" && strings.Trim(cell, "0123456789") != "") {
			it.Gauge = more
		} else if name.IsDrainWord(table.Fold(cell)) && it.Signal == "" {
			it.Signal = cell
		} else {
			it.Gauge.Spec = cell
		}
	}
	cell, col := v.cell(name.FieldGauge)
	if name.StateOf(cell) == name.Blank && b.Has(name.FieldPin) && it.Signal == "" && value.IsNothing(b.Cell(v.cells, name.FieldSignal)) &&
		value.IsNothing(b.Cell(v.cells, name.FieldTo)) {
		cell = "" // "NC": nothing stands in the cavity
	}
	if cell != "" {
		g, ok := value.ParseGauge(squareword.Whole(cell), b.Cols[col].Bare, b.Mark)
		if !ok {
			g, ok = value.SizeAndColour(v.im.Colours.InEnglish(cell), b.Cols[col].Bare, b.Lang, b.Mark)
		}
		if front, aside, sizeless := cable.CutAside(cell); !ok && aside != "" {
			if g, ok = value.SizeAndColour(front, b.Cols[col].Bare, b.Lang, b.Mark); !ok && sizeless {
				g, ok = value.ParseGauge(front, b.Cols[col].Bare, b.Mark)
			}
			if ok {
				it.Aside, cell = value.JoinNonEmpty("; ", it.Aside, aside), front
			}
		}
		if _, made := strands.Cut(squareword.Whole(cell)); ok && made != "" {
			it.Notes = append(it.Notes, "strands: "+made)
		}
		if c, is := value.ParseColour(cell, b.Lang); !ok && is && strings.Trim(cell, "0123456789") != "" && !b.Has(name.FieldColour) {
			g, ok = value.Gauge{Colour: c, Size: it.Gauge.Size}, true // one column for both, and this row says the colour alone
		}
		switch within := sizeWithin(cell, &b.Cols[col], b.Mark); {
		case ok && it.Gauge.Size != "" && g.Size != "" && it.Gauge.Size != g.Size:
			v.keep("size against part number", "size", cell, col)
		case ok:
			if g.Spec == "" {
				g.Spec = it.Gauge.Spec
			}
			if g.Size == "" {
				g.Size = it.Gauge.Size
			}
			if len(g.Colour) == 0 {
				g.Colour = it.Gauge.Colour
			}
			if g.Conductors == 0 {
				g.Conductors = it.Gauge.Conductors
			}
			g.Shielded, g.Twisted = g.Shielded || it.Gauge.Shielded, g.Twisted || it.Gauge.Twisted
			it.Gauge = g
		case within != "" && it.Gauge.Size == "":
			it.Gauge.Size = within
			if at := strings.LastIndex(cell, ", "); at > 0 { // "24 AWG red, shielded"
				if g, both := value.SizeAndColour(cell[:at], b.Cols[col].Bare, b.Lang, b.Mark); both {
					it.Gauge.Colour = g.Colour
				}
			}
			v.keep("more than a size", "size", cell, col)
		default:
			v.keep(cmp.Or(value.FaultOfRange(cell), wrongColumn(v.im, "size", cell, b)), "size", cell, col)
		}
	}
	it.Gauge.Size = cmp.Or(it.Gauge.Size, column.CoreSizeOf(b, v.cells))
	it.Colour = it.Gauge.Colour
}

// colour reads the columns of the colour and of its stripe.
func (v *valueReader) colour() {
	b, it := v.b, v.it
	stripe, stripeCol := v.cell(name.FieldStripe)
	cell, col := v.cell(name.FieldColour)
	if core, at := column.CoreColour(b, v.cells); core != "" && cell == "" {
		cell, col = core, at
		it.Notes = slices.DeleteFunc(it.Notes, func(n string) bool { return n == value.JoinNonEmpty(": ", b.Cols[at].Head, core) })
		if it.OwnID == core {
			it.OwnID = ""
		}
		v.im.Say(report.Note, "a colour among the numbers of the cores", v.column(at), core, "taken as the colour")
	}
	if cell == "" {
		if stripe != "" {
			v.keep("stripe without colour", "stripe", stripe, stripeCol)
		}
		return
	}
	own := cell
	cell = v.im.Colours.InEnglish(v.im.Opt.Recipe.InEnglish(cell))
	c, ok := value.ParseColour(cell, b.Lang)
	it.Each = eachColour(cell, b.Lang)
	counted := b.Cols[col].Counts && column.EndsInNumber(cell)
	if !ok && it.Gauge.Size == "" && !counted {
		if g, both := value.SizeAndColour(cell, b.Cols[col].Bare, b.Lang, b.Mark); both {
			it.Gauge.Size, c, ok = g.Size, g.Colour, true
		}
	}
	if !ok && b.Cols[col].Known() {
		if short, is := value.FirstLetters(cell, b.Lang); is && name.StateOf(cell) == name.Used {
			c, ok = short, true
			v.im.Say(report.Note, "colour cut short", v.column(col), fmt.Sprintf("%q", cell), "taken for "+c.String())
		}
	}
	if !ok {
		if of, is := value.ColourAndMore(cell, b.Lang); is {
			c, ok = of, true
			it.Notes = append(it.Notes, "colour: "+own)
			v.im.Say(report.Note, "more than a colour", v.column(col), fmt.Sprintf("%q", own),
				"taken as "+c.String()+", the rest kept in the note")
		}
	}
	whole := own
	if stripe != "" {
		s, good := value.ParseColour(v.im.Colours.InEnglish(v.im.Opt.Recipe.InEnglish(stripe)), b.Lang)
		c, ok = append(c, s...), ok && good && len(c)+len(s) <= value.MostHues
		whole += " / " + stripe
	}
	switch {
	case ok && len(it.Colour) > 0 && !it.Colour.Equal(c):
		v.keep("colour against part number", "colour", whole, col)
	case ok:
		it.Colour = c
		if strings.ContainsAny(whole, "*†‡") {
			it.Notes = append(it.Notes, "colour: "+whole)
		}
		if c.Shaded() {
			v.keep("shade that no code has", "colour", whole, col)
		}
	case stripe == "" && (name.StateOf(cell) > name.Blank || name.StateOf(cell) == name.Blank && !value.IsNotApplicable(cell) &&
		!joinsTwo(b, v.cells)): // a status stands where a colour belongs: stateOf of the row reads it
	default:
		v.keep(wrongColumn(v.im, "colour", cell, b), "colour", whole, col)
	}
}

// eachColour parts "red, black" in the colours of several wires; nil where it is no list of colours.
func eachColour(cell, lang string) (all []value.Colour) {
	if !strings.ContainsAny(cell, ",&;") && !strings.Contains(cell, " and ") {
		return nil
	}
	return value.ColoursOf(cell, lang, ",&;")
}

// isShortCode reports whether a cell is written as the short form of a colour or two: "L/R", "nb".
func isShortCode(cell string) bool {
	for part := range strings.FieldsFuncSeq(cell, func(r rune) bool { return strings.ContainsRune(" /-+", r) }) {
		if len(part) > 3 || strings.IndexFunc(part, func(r rune) bool { return !unicode.IsLetter(r) }) >= 0 {
			return false
		}
	}
	return len(cell) > 0 && len(cell) < 8
}

func (v *valueReader) length() {
	cell, col := v.cell(name.FieldLength)
	if cell == "" {
		return
	}
	u := v.b.Cols[col].Unit
	if u == "" {
		u = v.im.Opt.Unit
	}
	if mm, ok := value.ParseLength(cell, u, v.b.Mark); ok {
		v.it.Length = model.Some(mm)
	} else if mm, ok := value.LengthWithin(cell, u, v.b.Mark); ok {
		v.it.Length = model.Some(mm)
		v.it.Notes = append(v.it.Notes, "length: "+cell)
		v.im.Say(report.Note, "more than a length", v.column(col), fmt.Sprintf("%q", cell),
			"taken as "+value.MmText(mm)+", the rest kept in the note")
	} else if _, bare := value.LengthWithin(cell, "mm", v.b.Mark); bare {
		v.keep("length without unit", "length", cell, col)
	} else {
		v.keep(wrongColumn(v.im, "length", cell, v.b), "length", cell, col)
	}
}

func (v *valueReader) current() {
	cell, col := v.cell(name.FieldCurrent)
	if cell == "" {
		return
	}
	if a, ok := value.ParseCurrent(cell, v.b.Cols[col].Milli, v.b.Mark); ok {
		v.it.Amps = model.Some(a)
	} else {
		v.keep(wrongColumn(v.im, "current", cell, v.b), "current", cell, col)
	}
}

// isNone is a word for none, where a fuse would be named.
func isNone(cell string) bool {
	switch table.Fold(strings.TrimSpace(cell)) {
	case "none", "no", "nil", "n/a", "na", "without", "unfused", "not fused", "keine", "kein", "ohne", "aucun", "sans", "ninguno", "sin",
		"nessuno", "senza":
		return true
	}
	return false
}

// wrongColumn is the rule for a cell that is no such thing: it may be another.
func wrongColumn(im *draft.Importer, what, cell string, b *shape.Block) string {
	if _, ok := value.ParseGauge(cell, value.BareAWG, b.Mark); ok && what != "size" && strings.Trim(cell, "0123456789.,") != "" {
		return "a size in the column of the " + what
	}
	if _, ok := value.ParseColour(cell, b.Lang); ok && what != "colour" && strings.Trim(cell, "0123456789-/., ") != "" {
		return "a colour in the column of the " + what
	}
	if _, ok := value.ParseLength(cell, "", b.Mark); ok && what != "length" {
		return "a length in the column of the " + what
	}
	if _, ok := value.ParseCurrent(cell, false, b.Mark); ok && what != "current" && strings.Trim(cell, "0123456789.,") != "" {
		return "a current in the column of the " + what
	}
	all := value.Scan(table.Fold(cell))
	for i := 1; i < len(all); i++ {
		if all[i-1].Kind == '0' && value.IsCount(all, i) && all[i-1].Text != "1" {
			return "a cable in a list of single wires"
		}
	}
	return "no " + what
}
