package page

import (
	"fmt"
	"html/template"
	"slices"
	"strings"

	"contralay/model/unit"
)

// Page is one page, laid.
type Page struct {
	Name string // of the sections and parts on it
	HTML template.HTML
	Used unit.Millimetre // of its height, by blocks
}

// Set is all pages.
type Set struct {
	Pages    []Page
	Contents []Entry
	Squeezed []string // blocks that are higher than a page and were made smaller, with how much
}

// Lay lays blocks into pages.
func Lay(blocks []Block) Set {
	blocks = slices.Clone(blocks)
	l := layout{}
	l.begin()
	for n := 0; n < len(blocks); {
		end := n + 1
		for end < len(blocks) && blocks[end-1].KeepNext {
			end++
		}
		l.together(blocks[n:end])
		n = end
	}
	return l.done()
}

// placed is a block, or a part of one, on a page.
type placed struct {
	gap, high unit.Millimetre
	text      template.HTML
	late      func([]Entry, int) template.HTML
}

// laid is a page that is being filled.
type laid struct {
	blocks   []placed
	used     unit.Millimetre
	sections []string
	parts    map[string][]string
}

type layout struct {
	pages         []*laid
	section, part string
	set           Set
	marks         []Entry
}

func (l *layout) now() *laid { return l.pages[len(l.pages)-1] }

func (l *layout) begin() { l.pages = append(l.pages, &laid{parts: map[string][]string{}}) }

// room is what is left of the page below a gap.
func (l *layout) room(gap unit.Millimetre) unit.Millimetre {
	if len(l.now().blocks) == 0 {
		return BodyHigh
	}
	return BodyHigh - l.now().used - gap
}

// together lays blocks of which all but the last stay with the next.
func (l *layout) together(blocks []Block) {
	need, fresh := unit.Millimetre(0), false
	for k := range blocks {
		b := &blocks[k]
		fresh = fresh || b.NewPage
		if k > 0 {
			need += b.Gap
		}
		if k == len(blocks)-1 && b.Cut != nil {
			need += b.Cut.first()
		} else {
			need += b.high()
		}
	}
	if len(l.now().blocks) > 0 && (fresh || need > l.room(blocks[0].Gap)+1e-6) {
		l.begin()
	}
	for k := range blocks {
		blocks[k].NewPage = false // it has begun one with the first of them
		l.block(blocks[k])
	}
}

// block lays one block where there is room, a block that may be cut over as many pages as it takes.
func (l *layout) block(b Block) {
	if b.Cut == nil {
		if len(l.now().blocks) > 0 && b.High > l.room(b.Gap)+1e-6 {
			l.begin()
		}
		l.names(&b)
		if b.Section != "" && b.says == b.Section && len(l.now().blocks) == 0 &&
			len(l.now().sections) == 1 { // the head of the page says it
			return
		}
		l.put(b.Gap, b.High, b.HTML, b.Late)
		return
	}
	for cut := b.Cut; cut != nil && len(cut.Rows) > 0; {
		text, high, rest := cut.part(l.room(b.Gap))
		if text == "" {
			if len(l.now().blocks) > 0 {
				l.begin()
				continue
			}
			one := *cut // a row that is higher than a page
			one.Rows, one.Columns = cut.Rows[:1], 1
			text, high = one.all()
			rest = nil
			if len(cut.Rows) > 1 {
				more := *cut
				more.Rows = cut.Rows[1:]
				rest = &more
			}
		}
		l.names(&b)
		l.put(b.Gap, high, text, nil)
		cut = rest
	}
}

// names says which section and part what is laid next belongs to.
func (l *layout) names(b *Block) {
	if b.Section != "" && b.Section != l.section {
		l.section, l.part = b.Section, ""
		l.set.Contents = append(l.set.Contents, Entry{Section: b.Section, Page: len(l.pages)})
	}
	if b.Part != "" && b.Part != l.part {
		l.part = b.Part
		l.set.Contents = append(l.set.Contents, Entry{Section: l.section, Part: b.Part, Page: len(l.pages)})
	}
	if b.Mark != "" {
		l.marks = append(l.marks, Entry{Mark: b.Mark, Page: len(l.pages)})
	}
	p := l.now()
	if !slices.Contains(p.sections, l.section) && l.section != "" {
		p.sections = append(p.sections, l.section)
	}
	if l.part != "" && !slices.Contains(p.parts[l.section], l.part) {
		p.parts[l.section] = append(p.parts[l.section], l.part)
	}
}

func (l *layout) put(gap, high unit.Millimetre, text template.HTML, late func([]Entry, int) template.HTML) {
	p := l.now()
	if len(p.blocks) == 0 {
		gap = 0
	}
	if high > BodyHigh+1e-6 {
		l.set.Squeezed = append(l.set.Squeezed, fmt.Sprintf("page %d: a block of %.1f mm, %.1f at most", len(l.pages), float64(high),
			float64(BodyHigh)))
		text = template.HTML(fmt.Sprintf(`<div style="transform:scale(%.3f);transform-origin:0 0">%s</div>`, // #nosec: made of blocks
			float64(BodyHigh/high), text))
		high = BodyHigh
	}
	p.blocks = append(p.blocks, placed{gap, high, text, late})
	p.used += gap + high
}

// done is the pages as they are printed, with what could not be known before.
func (l *layout) done() Set {
	if n := len(l.pages); n > 1 && len(l.pages[n-1].blocks) == 0 {
		l.pages = l.pages[:n-1]
	}
	for _, p := range l.pages {
		var b strings.Builder
		for _, x := range p.blocks {
			text := x.text
			if x.late != nil {
				text = x.late(slices.Concat(l.set.Contents, l.marks), len(l.pages))
			}
			put(&b, x.gap, x.high, text)
		}
		var names []string
		for _, s := range p.sections {
			names = append(names, strings.TrimSpace(s+" "+strings.Join(p.parts[s], ", ")))
		}
		l.set.Pages = append(l.set.Pages, Page{Name: strings.Join(names, "; "),
			HTML: template.HTML(b.String()), Used: p.used}) // #nosec: made of blocks
	}
	return l.set
}
