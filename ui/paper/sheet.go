package paper

import (
	"bytes"
	_ "embed"
	"fmt"
	"html/template"
	"strings"
	"unicode/utf8"

	"contralay/calc/phase/threading"
	"contralay/calc/phase/wires"
	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/ui/guide"
)

// Meta is what a sheet says of itself and cannot know: who prints it gives it.
type Meta struct {
	On      string // the day
	Hash    string // of the file it was made from; "" where there is none
	File    string // its name, without folder
	Unsaved bool   // made from work that is in no file
}

// Sheet is one build sheet, ready to be written out.
type Sheet struct {
	HTML  []byte
	Lists []Table // each a file of its own, too
}

//go:embed sheet.html
var sheetText string

// Make builds the sheet: one page of HTML that holds all it needs, and its lists. It is a
// pure function of the sheet and of what it is told of file and day.
func Make(s *sheet.Sheet, meta Meta) (Sheet, error) {
	t, err := template.New("sheet").Funcs(template.FuncMap{
		"right": func(t Table, k int) bool { return t.align[k] == toRight },
		"blank": func(t Table, k int) bool { return t.align[k] == byHand },
		"parts": parts,
		"soft":  soft,
		"long":  func(s string) bool { return utf8.RuneCountInString(s) > mostID },
	}).Parse(sheetText)
	if err != nil {
		return Sheet{}, err
	}
	m := makerOf(s)
	p := m.pages(meta)
	var b bytes.Buffer
	if err := t.Execute(&b, p); err != nil {
		return Sheet{}, err
	}
	out := Sheet{HTML: b.Bytes()}
	for _, l := range []Table{p.Branches, p.Ends, p.Units, p.Cut, p.Flags, m.pinList(), p.Crimps, p.Splices, p.Labels, p.Bill, p.Loads,
		p.Feeds, p.Ring, p.Loops, p.Spares, p.Threading} {
		if len(l.Rows) > 0 {
			out.Lists = append(out.Lists, l)
		}
	}
	return out, nil
}

// pages is all that the page of HTML is made of.
type pages struct {
	Meta
	Number, Revision, Name, Note string
	State                        string
	Foot                         string
	Snags                        []snagLine
	Stops                        int
	Map                          template.HTML
	Branches, Ends               Table
	Cards                        []card
	Units, Cut, Flags            Table
	Threading                    Table
	Tails                        []Table
	Glue                         Table
	Pins                         []Table
	Crimps, Splices, Labels      Table
	Bill, Loads, Feeds           Table
	Ring, Isolation              Table
	Loops, Spares, Lots          Table
	Holds                        []run.Hold
	Built                        []Table
	Cautions                     []string
	Mm                           string
	Total                        string
}

type snagLine struct{ Mark, Level, Where, Says string }

func (m maker) pages(meta Meta) pages {
	h := m.h.Head
	p := pages{Meta: meta, Number: h.Number.V, Revision: h.Revision.V, Name: h.Name.V, Note: h.Note.V, Mm: m.sys.Name(),
		Map:      template.HTML(m.treeMap()), // #nosec: it escapes what it writes
		Branches: m.branches(), Ends: m.ends(), Units: m.units(), Cut: m.cutList(), Flags: m.flags(),
		Crimps: m.crimps(), Splices: m.splices(), Labels: m.labels(), Bill: m.bill(), Loads: m.loads(), Feeds: m.feeds(),
		Ring: m.ringOut(), Isolation: m.isolation(), Loops: m.loops(), Spares: m.spares(), Lots: m.lots(),
		Holds: run.Holds(), Built: m.built(), Cautions: guide.Cautions(),
		Threading: m.threading(threading.Threading(m.s), "Threading list", "threading"),
	}
	p.Threading.Note = "On in this order before the contacts; legs that do not meet may go in any order."
	p.State = strings.Join(nonEmpty(strings.TrimSpace(h.Number.V+" "+h.Revision.V), meta.On, word("file ", meta.File), word("", meta.Hash)),
		"   ")
	if meta.Unsaved {
		p.State += "   UNSAVED WORK: no file holds this"
	}
	p.Foot = strings.Join(nonEmpty(strings.TrimSpace(h.Number.V+" rev "+dash(h.Revision.V)), meta.On, meta.Hash,
		map[bool]string{true: "UNSAVED WORK"}[meta.Unsaved]), "  ·  ")
	for _, g := range sheet.Grouped(m.s.Snags) {
		if g.Level == sheet.Stop {
			p.Stops++
		}
		p.Snags = append(p.Snags, snagLine{map[sheet.Level]string{sheet.Stop: "!", sheet.Warn: "?", sheet.Note: "-"}[g.Level],
			g.Level.String(), g.Where, g.Says + g.More()})
	}
	for _, k := range wires.Walked(m.s) {
		p.Cards = append(p.Cards, m.card(k.Branch))
	}
	for k := range m.h.Terminations {
		id := m.h.Terminations[k].ID
		p.Pins = append(p.Pins, m.pins(k))
		if tail := threading.TailOf(m.s, id); len(tail) > 0 {
			p.Tails = append(p.Tails, m.tail(tail, "At "+strings.TrimSpace(id+"  "+m.h.Terminations[k].Name.V)))
		}
	}
	if len(threading.Mixes(m.s)) > 0 {
		p.Glue = m.glue()
	}
	t := m.s.Totals
	p.Total = fmt.Sprintf("%d wires, %d made-up units, %d spares, %d fillers, %.1f m of wire", t.Wires, t.Units, t.Spares, t.Fillers,
		float64(t.WireMM)/1000)
	if t.Gram.Set {
		p.Total += fmt.Sprintf(", %.0f g without its covers", float64(t.Gram.V))
	}
	return p
}

// parts is the members of a layer in columns that fill a page's width.
func parts(all []cardMember) [][]cardMember {
	const most = 12 // rows of one column
	n := 1
	if len(all) > most {
		n = 2 // more than two are too narrow for their words
	}
	per := (len(all) + n - 1) / n
	var out [][]cardMember
	for len(all) > 0 {
		k := min(per, len(all))
		out, all = append(out, all[:k]), all[k:]
	}
	return out
}
