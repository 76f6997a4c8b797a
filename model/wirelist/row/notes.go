package row

import (
	"contralay/model"
	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// readNote reads the note: a fuse, a cable it is part of, the wires it pairs with. A remark about a fuse or another wire is kept in the
// words of the list, too: they are what the bench looks for.
func readNote(im *draft.Importer, b *shape.Block, cells []string, it *draft.Item) {
	if it.Gauge.Conductors > 1 || it.Gauge.Shielded || it.Gauge.Twisted {
		it.Cue = it.Gauge
		if cell, _ := b.CellAt(cells, name.FieldGauge); cell != "" {
			it.CueText = cell // kept as the list has it where no unit comes of it
		}
		spec := b.Cell(cells, name.FieldSpec)
		if g, ok := value.ParseGauge(spec, value.BareAWG, b.Mark); ok && g.IsCable() {
			it.CueText = spec
		}
	}
	note := value.JoinNonEmpty("; ", b.Cell(cells, name.FieldNote), it.Aside)
	if note == "" || name.StateOf(note) != name.Used {
		it.Notes = append(it.Notes, nonEmpty(it.Aside)...)
		return
	}
	if a, rest, ok := value.FuseIn(note, b.Mark); ok && !it.Fuse.Set {
		it.Fuse = model.Some(a)
		if rest == "" {
			it.Notes = append(it.Notes, note) // in the words of the list, too
			return
		}
		note = rest
	}
	if value.IsPairMark(note) { // its number is no size
		it.Cue, it.CueText, it.Pair = value.Gauge{Twisted: true}, note, note
		it.Notes = append(it.Notes, note)
		return
	}
	if called, kind, rest := cable.Marked(note); it.Cable == "" && called != "" {
		it.Cable, it.Kind.Twisted, it.Kind.Shielded = called, kind.Twisted, kind.Shielded
		it.Notes = append(it.Notes, nonEmpty(rest)...)
		return
	}
	if c := cable.Numbered(note); c.Called != "" && it.Gauge.Size != "" && it.Gauge.Size != c.Number && it.OwnID != c.Called {
		it.Cable, it.Kind, it.CueText = c.Called, c.Made, c.Says
		if c.Rest != "" {
			it.Notes = append(it.Notes, c.Rest)
		}
		return
	}
	if g, ok := value.ParseGauge(note, value.BareAWG, b.Mark); ok && g.Spec == "" && (g.Conductors > 1 || g.Shielded || g.Twisted) {
		g.Size = cable.SizeIn(note, g.Size)
		if g.Size == "" || g.Size == it.Gauge.Size || it.Gauge.Size == "" {
			if it.Gauge.Size == "" {
				it.Gauge.Size = g.Size
			}
			it.Cue, it.CueText, it.Remarked = g, note, true
			it.Notes = append(it.Notes, note) // in the words of the list, too
			return
		}
		im.Say(report.Warn, "size against the cable in the note", it.Place, it.Gauge.Size+" and "+note, "the note is kept")
	}
	p := cable.ReadWith(note)
	if len(p.Of) == 0 {
		p = cable.ReadBeside(note, it.OwnID)
	}
	if len(p.Of) > 0 {
		it.With, it.CueText = p.Of, p.Text
		if p.Rest != "" {
			it.Notes = append(it.Notes, p.Rest)
		}
		if g := cable.Words(p.Text); g.Shielded || g.Twisted {
			it.Cue.Shielded, it.Cue.Twisted = it.Cue.Shielded || g.Shielded, it.Cue.Twisted || g.Twisted
		}
		it.Notes = append(it.Notes, p.Text)
		return
	}
	it.Notes = append(it.Notes, note)
}
