package cablecells

import (
	"cmp"
	"slices"
	"strings"

	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Take reads the columns about cables of one row: the name of a cable or of a shield,
// a mark that says yes, the wires it pairs with.
func Take(im *draft.Importer, b *shape.Block, cells []string, it *draft.Item) {
	var names, shields []string
	for i, c := range b.Cols {
		if c.Field != name.FieldCable || i >= len(cells) || value.IsNothing(cells[i]) {
			continue
		}
		head := cable.Words(c.Head)
		if head.Shielded && (head.Twisted || head.Conductors > 0) && strings.ContainsAny(c.Head, "/,&") {
			head = value.Gauge{} // "Twist/Shield": the cell says which
		}
		text := cells[i]
		if mark, kind := cable.MarkHeading(c.Head); mark != "" && cable.YesOrNo(text) != "" {
			if cable.YesOrNo(text) == "yes" && kind.Conductors > 1 {
				names, it.Kind.Twisted = append(names, mark), it.Kind.Twisted || kind.Twisted
				it.Kind.Shielded = it.Kind.Shielded || kind.Shielded
			} else if cable.YesOrNo(text) == "yes" {
				shields = append(shields, mark)
			}
			continue
		}
		switch cable.YesOrNo(text) {
		case "no":
			continue
		case "yes":
			if head.IsCable() {
				it.Cue.Twisted, it.Cue.Shielded = it.Cue.Twisted || head.Twisted, it.Cue.Shielded || head.Shielded
				it.Cue.Conductors = max(it.Cue.Conductors, head.Conductors)
				it.CueText = value.JoinNonEmpty("; ", it.CueText, c.Head)
				continue
			}
			names = append(names, text)
		default:
			if cable.IsBracket(text) && head.IsCable() { // it joins the rows beside
				it.Cue.Twisted, it.Cue.Shielded = it.Cue.Twisted || head.Twisted, it.Cue.Shielded || head.Shielded
				it.Cue.Conductors = max(it.Cue.Conductors, head.Conductors)
				it.CueText, it.Joined = value.JoinNonEmpty("; ", it.CueText, c.Head), true
				continue
			}
			if of := cable.PartnersBelow(c.Head, text, name.Words(table.Fold(c.Head))); len(of) > 0 {
				it.With, it.CueText = append(it.With, of...), value.JoinNonEmpty("; ", it.CueText, c.Head+" "+text)
				it.Cue.Twisted = it.Cue.Twisted || head.Twisted
				continue
			}
			if p := cable.ReadWith(text); len(p.Of) > 0 {
				it.With, it.CueText = append(it.With, p.Of...), value.JoinNonEmpty("; ", it.CueText, p.Text)
				if p.Rest != "" {
					it.Notes = append(it.Notes, value.JoinNonEmpty(": ", c.Head, p.Rest))
				}
				g := cable.Words(text)
				it.Cue.Shielded, it.Cue.Twisted = it.Cue.Shielded || g.Shielded, it.Cue.Twisted || g.Twisted
				continue
			}
			if _, pin, ok := name.SplitEnd(text); ok && strings.Contains(text, ":") && name.IsCavity(pin) && head.Shielded {
				// Where the shield is grounded; the row of its drain would say so, too.
				it.Cue.Shielded, it.CueText = true, value.JoinNonEmpty("; ", it.CueText, c.Head)
				it.Notes = append(it.Notes, value.JoinNonEmpty(": ", c.Head, text))
				im.Say(report.Note, "shield taken to a cavity", it.Place, text, "kept in the note, no drain made")
				continue
			}
			for _, one := range cable.Names(text) {
				g := cable.Words(one)
				switch {
				case g.Shielded && !g.Twisted && g.Conductors == 0 && cable.IsMark(one), head.Shielded && !g.IsCable():
					shields = append(shields, one)
				default:
					names = append(names, one)
					it.Bare = !g.Twisted && !g.Shielded && !head.Twisted && !head.Shielded && !cable.SaysPairs(c.Head+" "+one)
					it.Kind.Twisted, it.Kind.Shielded = it.Kind.Twisted || head.Twisted, it.Kind.Shielded || head.Shielded
				}
			}
		}
	}
	it.Cable, it.Shield = cmp.Or(strings.Join(names, " "), it.Cable), strings.Join(shields, " ")
	takeKind(b, cells, it)
	if it.Cable != "" { // a mark beside its name says how it is made
		it.Kind.Shielded, it.Kind.Twisted = it.Kind.Shielded || it.Cue.Shielded, it.Kind.Twisted || it.Cue.Twisted
	}
	if it.Cable == "" && len(it.With) == 0 { // else the row says which wires go together, and the shield is over them
		it.Cable, it.Kind.Shielded = it.Shield, it.Kind.Shielded || it.Shield != ""
	}
}

// takeKind reads what the kind of the cable says, in a column of its own, and which pair of it the core is in.
func takeKind(b *shape.Block, cells []string, it *draft.Item) {
	for i, c := range b.Cols {
		if i >= len(cells) || cells[i] == "" {
			continue
		}
		switch {
		case c.CoreSize || c.Field == name.FieldGauge && !it.Plain:
			it.Plain = cable.IsPlain(cells[i])
		case c.Field == name.FieldKeep && value.CoreSize(cells[i], b.Mark) != "":
			it.Plain = it.Plain || cable.IsPlain(cells[i]) // beside a column of the sizes
		}
	}
	if it.Pair != "" && it.Cable != "" {
		it.Notes = append(it.Notes, "cable: "+it.Cable)
		it.Cable, it.Plain = it.Cable+" "+it.Pair, false
	}
	it.Bare = it.Bare && it.Pair == "" && !slices.ContainsFunc(cells, func(c string) bool {
		w := cable.Words(c)
		return cable.SaysPairs(c) || w.Twisted || w.Shielded
	})
}
