package page

import (
	_ "embed"
	"encoding/base64"
	"fmt"
	"html"
	"html/template"
	"slices"
	"strings"

	"contralay/model/unit"
	"contralay/ui/paper/font"
	"contralay/ui/paper/list"
)

// Frame is what stands at the head and the foot of every page.
type Frame struct {
	Number, Revision, Name string
	Kind                   string // of papers: "build sheet"
	Serial, Quantity       string // "" leaves room to write it in
	Identity               string
	Foot                   string // the state of what it was printed from
}

//go:embed page.css
var pageCSS string

// style is the style sheet with the face in it, which is the same for all pages ever printed.
func style() string {
	var b strings.Builder
	for _, bold := range []bool{false, true} {
		weight := map[bool]string{false: "normal", true: "bold"}[bold]
		fmt.Fprintf(&b, "@font-face{font-family:Go;font-weight:%s;src:url(data:font/ttf;base64,%s)}\n", weight,
			base64.StdEncoding.EncodeToString(font.Of(bold).TTF))
	}
	for _, l := range letters() {
		b.WriteString(l.style() + "\n")
	}
	return b.String() + pageCSS
}

// caution stands at the foot of every page.
const caution = "A planning aid, not an approval."

// HTML is the whole set as one page of HTML that holds all it needs, the same for A4 and Letter.
func (s Set) HTML(f Frame) []byte {
	var b strings.Builder
	fmt.Fprintf(&b, `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width,initial-scale=1">
<title>%s</title>
<style>%s</style></head><body>
`, html.EscapeString(strings.TrimSpace(f.Number+" "+f.Revision+" "+f.Name)+": "+f.Kind), style())
	for k, p := range s.Pages {
		b.WriteString(`<section class="page">` + "\n")
		f.head(&b, p.Name, k+1, len(s.Pages))
		fmt.Fprintf(&b, `<div class="body" style="height:%s">%s</div>`, mm(BodyHigh), p.HTML)
		f.foot(&b)
		b.WriteString("</section>\n")
	}
	b.WriteString("</body></html>\n")
	return []byte(b.String())
}

// head is two lines: which harness, and which page of it.
func (f Frame) head(b *strings.Builder, name string, page, pages int) {
	const (
		serialWide   unit.Millimetre = 54
		quantityWide unit.Millimetre = 24
		pageWide     unit.Millimetre = 32
	)
	bold := Letter{Point: 12, Bold: true}
	number := bold.Short(strings.TrimSpace(f.Number+"  rev "+list.Dash(f.Revision)), Wide-serialWide-quantityWide-pageWide-4)
	says := fmt.Sprintf("identity %s", f.Identity)
	room := Wide - Small.Wide("identity 0000-0000-0000-0000") - 6
	fmt.Fprintf(b, `<header><div class="line"><span class="p12b">%s</span>%s%s<span class="p12b">page %d of %d</span></div>`,
		html.EscapeString(number), box("SERIAL", f.Serial, serialWide), box("QTY", f.Quantity, quantityWide), page, pages)
	fmt.Fprintf(b, `<div class="line"><h2 class="p14b">%s</h2><span class="p9">%s</span></div></header>`+"\n",
		html.EscapeString(Heading.Short(name, room)), html.EscapeString(says))
}

// box is a word with its value, or with a line to write it on.
func box(word, value string, wide unit.Millimetre) string {
	l := Letter{Point: 12, Bold: true}
	return fmt.Sprintf(`<span class="box" style="width:%s"><span class="p9">%s</span><span class="p12b value">%s</span></span>`, mm(wide),
		word, html.EscapeString(l.Short(value, wide-14)))
}

func (f Frame) foot(b *strings.Builder) {
	room := Wide - Strong.Wide(caution) - 6
	fmt.Fprintf(b, `<footer><span class="p9">%s</span><span class="p9b">%s</span></footer>`+"\n",
		html.EscapeString(Small.Short(f.Foot, room)), caution)
}

// Contents is the contents list as a block: each section with its page, its parts behind it. The
// blocks are those of the whole set; how high it is depends on their names alone.
func Contents(blocks []Block, l Letter, wide unit.Millimetre) Block {
	var entries []Entry
	for k := range blocks {
		if b := &blocks[k]; b.Section != "" || b.Part != "" {
			if b.Section != "" && (len(entries) == 0 || entries[len(entries)-1].Section != b.Section) {
				entries = append(entries, Entry{Section: b.Section, Page: 999})
			}
			if b.Part != "" && len(entries) > 0 {
				entries = append(entries, Entry{Section: entries[len(entries)-1].Section, Part: b.Part, Page: 999})
			}
		}
	}
	high := contentsGrid(entries, l, wide).Block()
	named := func(e Entry) bool {
		return slices.ContainsFunc(entries, func(o Entry) bool { return o.Section == e.Section })
	}
	return Block{High: high.high(), Gap: 1, Late: func(all []Entry, _ int) template.HTML {
		all = slices.DeleteFunc(slices.Clone(all), func(e Entry) bool { return !named(e) }) // not the page that it stands on
		text, _ := contentsGrid(all, l, wide).Block().Cut.all()
		return text
	}}
}

// mostParts is how many parts of a section the contents names; of more, the first and the last.
const mostParts = 4

func contentsGrid(entries []Entry, l Letter, wide unit.Millimetre) Grid {
	g := Grid{Cols: []Col{{Head: "contents", Wide: wide - 16}, {Head: "page", Wide: 16, Align: list.ToRight, Bold: true}}, Letter: l,
		Wide: wide, Bare: true, Plain: true}
	for n := 0; n < len(entries); {
		end := n + 1
		var parts []string
		for end < len(entries) && entries[end].Section == entries[n].Section {
			parts = append(parts, entries[end].Part)
			end++
		}
		first, last := entries[n].Page, entries[end-1].Page
		pages := fmt.Sprint(first)
		if last > first {
			pages = fmt.Sprintf("%d–%d", first, last)
		}
		says := entries[n].Section
		switch n := len(parts); {
		case n > mostParts:
			says += ": " + parts[0] + " … " + parts[n-1]
		case n > 0:
			says += ": " + strings.Join(parts, ", ")
		}
		g.Lines = append(g.Lines, Cells(says, pages))
		n = end
	}
	return g
}
