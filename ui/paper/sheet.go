package paper

import (
	"bytes"
	"cmp"
	_ "embed"
	"fmt"
	"html/template"
	"strings"
	"unicode/utf8"

	"contralay/calc/phase/threading"
	"contralay/calc/phase/wires"
	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model/visible"
	"contralay/ui/guide"
	"contralay/ui/paper/list"
	"contralay/ui/paper/origin"
)

// Meta is what a sheet says of itself and cannot know: who prints it gives it.
type Meta struct {
	On      string // the day
	Hash    string // of the file it was made from; "" where there is none
	File    string // its name, without folder
	Unsaved bool   // made from work that is in no file
	Shop    string // names of the catalogues that were added to the program's own; "" for none
}

// Sheet is one build sheet, ready to be written out.
type Sheet struct {
	HTML     []byte
	Lists    []list.Table // each a file of its own, too
	Without  []string     // the files of the lists that have no row this time
	Identity string       // no other sheet has it
}

//go:embed sheet.html
var sheetText string

// Make builds the sheet: one page of HTML that holds all it needs, and its lists. It is a
// pure function of the sheet and of what it is told of file and day.
func Make(s *sheet.Sheet, meta Meta) (Sheet, error) {
	m := makerOf(s)
	t, err := template.New("sheet").Funcs(template.FuncMap{
		"right": func(t list.Table, k int) bool { return t.Align[k] == list.ToRight },
		"blank": func(t list.Table, k int) bool { return t.Align[k] == list.ByHand },
		"parts": parts,
		"soft":  soft,
		"says":  m.Sys.Says,
		"long":  func(s string) bool { return utf8.RuneCountInString(s) > mostID },
	}).Parse(sheetText)
	if err != nil {
		return Sheet{}, err
	}
	meta.File, meta.Shop = visible.Line(meta.File), visible.Line(meta.Shop)
	p := m.pages(meta)
	var out Sheet
	for _, l := range []list.Table{p.Branches, p.Ends, p.Units, p.Cut, p.Flags, m.pinList(), p.Crimps, p.Splices, p.Labels, p.Bill, p.Loads,
		p.Feeds, p.Ring, p.Loops, p.Spares, p.Threading, m.tubes(), m.masses(), m.tools(), m.consumables(), m.pulls()} {
		if len(l.Rows) > 0 {
			out.Lists = append(out.Lists, l)
		} else {
			out.Without = append(out.Without, l.File)
		}
	}
	if out.Identity, err = identify(t, &p, out.Lists); err != nil {
		return Sheet{}, err
	}
	for k := range out.Lists {
		out.Lists[k].Sheet = fmt.Sprintf("%s rev %s, identity %s", list.Dash(p.Number), list.Dash(p.Revision), out.Identity)
	}
	var b bytes.Buffer
	if err := t.Execute(&b, p); err != nil {
		return Sheet{}, err
	}
	out.HTML = safe(b.Bytes())
	return out, nil
}

// identify gives a page its identity, which is made from all that is printed but itself.
func identify(t *template.Template, p *pages, lists []list.Table) (string, error) {
	p.sign("")
	var b bytes.Buffer
	if err := t.Execute(&b, *p); err != nil {
		return "", err
	}
	texts := [][]byte{b.Bytes()}
	for _, l := range lists {
		text, err := CSV(l)
		if err != nil {
			return "", err
		}
		texts = append(texts, []byte(l.File), text)
	}
	id := p.origin.Identity(texts...)
	p.sign(id)
	return id, nil
}

// sign writes what the page was made from, and its identity, at its head and its foot.
func (p *pages) sign(identity string) {
	p.Identity = identity
	o := p.origin
	unsaved, file := "", strings.Join(list.NonEmpty(p.File, p.Hash), "   ")
	if p.Unsaved {
		unsaved = "UNSAVED WORK"
	}
	const between = "  ·  "
	p.State = strings.Join(list.NonEmpty(strings.TrimSpace(p.Number+" "+p.Revision), p.On, "identity "+identity,
		list.Word("file ", p.File), p.Hash),
		between)
	if p.Unsaved {
		p.State += between + "UNSAVED WORK: no file holds this"
	}
	p.Foot = strings.Join(list.NonEmpty(strings.TrimSpace(p.Number+" rev "+list.Dash(p.Revision)), p.On, "identity "+identity,
		unsaved), between) +
		"\n" + strings.Join(list.NonEmpty(list.Word("file ", p.Hash), "harness "+o.Harness, "catalogue "+o.Catalogue, o.Learned(),
		"release "+o.Release), between) + "\nA planning aid, not an approval."
	p.MadeFrom = [][2]string{
		{"number, revision", list.Dash(p.Number) + " rev " + list.Dash(p.Revision)},
		{"identity", identity},
		{"day", list.Dash(p.On)},
		{"file", cmp.Or(strings.Join(list.NonEmpty(file, unsaved), "   "), "none")},
		{"harness", o.Harness},
		{"catalogue", o.Catalogue + "   the program's own" + list.Word(", then ", p.Shop)},
		{"corrections", o.Learned()},
		{"release", "contralay " + o.Release},
	}
}

// pages is all that the page of HTML is made of.
type pages struct {
	Meta
	Number, Revision, Name, Note string
	State                        string
	Foot                         string
	Identity                     string
	MadeFrom                     [][2]string // what it was made from, each with its name
	origin                       origin.Origin
	Snags                        []snagLine
	Stops                        int
	Drawing                      template.HTML
	Drawn                        []string
	Branches, Ends               list.Table
	Cards                        []card
	Units, Cut, Flags            list.Table
	Threading                    list.Table
	Tails                        []list.Table
	Glue                         list.Table
	Pins                         []list.Table
	Crimps, Splices, Labels      list.Table
	Bill, Loads, Feeds           list.Table
	Ring, Isolation              list.Table
	Loops, Spares, Lots          list.Table
	Holds                        []run.Hold
	Built                        []list.Table
	Cautions                     []string
	Mm                           string
	Total                        string
}

type snagLine struct{ Mark, Level, Where, Says string }

func (m maker) pages(meta Meta) pages {
	h := m.H.Head
	p := pages{Meta: meta, origin: origin.Of(m.S), Number: h.Number.V, Revision: h.Revision.V, Name: h.Name.V, Note: visible.Note(h.Note.V),
		Mm:       m.Sys.Name(),
		Branches: m.branches(), Ends: m.ends(), Units: m.units(), Cut: m.cutList(), Flags: m.flags(),
		Crimps: m.crimps(), Splices: m.splices(), Labels: m.labels(), Bill: m.bill(), Loads: m.loads(), Feeds: m.feeds(),
		Ring: m.ringOut(), Isolation: m.isolation(), Loops: m.loops(), Spares: m.spares(), Lots: m.lots(),
		Holds: run.Holds(), Built: m.built(), Cautions: guide.Cautions(),
		Threading: m.threading(threading.Threading(m.S), "Threading list", "threading"),
	}
	p.Drawing, p.Drawn = m.drawing()
	p.Threading.Note = "On in this order before the contacts; legs that do not meet may go in any order."
	for _, g := range sheet.Grouped(m.S.Snags) {
		if g.Level == sheet.Stop {
			p.Stops++
		}
		p.Snags = append(p.Snags, snagLine{map[sheet.Level]string{sheet.Stop: "!", sheet.Warn: "?", sheet.Note: "-"}[g.Level],
			g.Level.String(), g.Where, m.Sys.Says(g.Says) + g.More()})
	}
	for _, k := range wires.Walked(m.S) {
		p.Cards = append(p.Cards, m.card(k.Branch))
	}
	for k := range m.H.Terminations {
		id := m.H.Terminations[k].ID
		p.Pins = append(p.Pins, m.pins(k))
		if tail := threading.TailOf(m.S, id); len(tail) > 0 {
			p.Tails = append(p.Tails, m.tail(tail, "At "+strings.TrimSpace(id+"  "+m.H.Terminations[k].Name.V)))
		}
	}
	if len(threading.Mixes(m.S)) > 0 {
		p.Glue = m.glue()
	}
	t := m.S.Totals
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
