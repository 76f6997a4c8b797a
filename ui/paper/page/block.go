package page

import (
	"fmt"
	"html"
	"html/template"
	"slices"
	"strings"

	"contralay/model/unit"
)

// The live area of every page, mm, the same on A4 (210 x 297) and on Letter (215.9 x 279.4).
const (
	Wide     unit.Millimetre = 186
	High     unit.Millimetre = 257
	headHigh unit.Millimetre = 14.6
	footHigh unit.Millimetre = 5.4
	// BodyHigh is what the head and the foot of a page leave for blocks.
	BodyHigh = High - headHigh - footHigh
)

// Block is one thing on a page. The zero value is an empty one.
type Block struct {
	Section  string // the section that begins with it; "" goes on with the one before
	Part     string // the part of the section that begins with it
	Mark     string // a place that another page points to; the contents do not name it
	HTML     template.HTML
	High     unit.Millimetre
	Gap      unit.Millimetre // above it, where it does not begin a page
	NewPage  bool            // it begins a page
	KeepNext bool            // it is never the last of its page
	Cut      *Cut            // how it is cut; nil: it stays whole
	// Late makes its HTML when all pages are known; its height is High.
	Late func(entries []Entry, pages int) template.HTML

	says string // of a heading: its words
}

// Cut is a block in rows, between which it may be cut. Then HTML and High of the block are not used.
type Cut struct {
	Open, Close template.HTML   // round the rows of a page, or of each column
	Head        template.HTML   // before the first row, on every page and in every column
	HeadHigh    unit.Millimetre // of it
	Rows        []Row
	Columns     int             // side by side; 0 is 1
	Gutter      unit.Millimetre // between them
	Wide        unit.Millimetre // of one column
}

// Row is one row of a block that may be cut.
type Row struct {
	HTML     template.HTML
	High     unit.Millimetre
	KeepNext bool // no page ends with it
}

// Entry is one line of the contents: a section, or a part of one; or a place that a page points to, which
// the contents leave out.
type Entry struct {
	Section, Part string
	Page          int
	Mark          string
}

// Section begins a section of the set: its name as a heading, which is never the last of a page. At the
// top of a page the head of the page says it.
func Section(name string) Block {
	b := headed(name, Heading, 4)
	b.Section, b.says = name, name
	return b
}

// SubHeading is a heading within a section.
func SubHeading(text string) Block { return headed(text, Sub, 2.5) }

// headed is a heading of a letter; the largest has a rule below it.
func headed(text string, l Letter, gap unit.Millimetre) Block {
	lines := l.Lines(text, Wide)
	class, more := l.Class(), unit.Millimetre(0.6)
	tag := "h3"
	if l == Heading {
		class, more, tag = class+" rule", 2, "h2"
	}
	return Block{HTML: template.HTML(fmt.Sprintf(`<%s class="%s">%s</%s>`, tag, class, joined(lines), tag)), // #nosec: escaped
		High: unit.Millimetre(len(lines))*l.Line() + more, Gap: gap, KeepNext: true}
}

// Text is a text over the width of a page, which may be cut between its lines.
func Text(text string, l Letter) Block { return TextIn(text, l, Wide) }

// TextIn is the same in a width.
func TextIn(text string, l Letter, wide unit.Millimetre) Block {
	c := Cut{Open: template.HTML(`<div class="` + l.Class() + `">`), Close: "</div>", Wide: wide}
	lines := l.Lines(text, wide)
	for k, line := range lines {
		c.Rows = append(c.Rows, Row{HTML: template.HTML("<div>" + html.EscapeString(line) + "</div>"), High: l.Line(), // #nosec: escaped
			KeepNext: k == 0 && len(lines) > 1 || k == len(lines)-2})
	}
	return Block{Cut: &c, Gap: 1}
}

// Picture is a drawing of a height.
func Picture(svg template.HTML, high unit.Millimetre) Block {
	return Block{HTML: `<div class="picture">` + svg + `</div>`, High: high, Gap: 1}
}

// Column is blocks that stand beneath each other in a width.
type Column struct {
	Wide   unit.Millimetre
	Blocks []Block
}

// Beside is columns side by side, as one block that stays whole.
func Beside(gutter unit.Millimetre, columns ...Column) Block {
	out := Block{Gap: 2}
	wholes := make([]Block, len(columns))
	for k, c := range columns {
		wholes[k] = Stack(c.Blocks...)
		out.High = max(out.High, wholes[k].High)
	}
	return out.made(wholes, func(texts []template.HTML) template.HTML {
		var b strings.Builder
		b.WriteString(`<div class="beside">`)
		for k, c := range columns {
			left := unit.Millimetre(0)
			if k > 0 {
				left = gutter
			}
			fmt.Fprintf(&b, `<div style="width:%s;margin-left:%s">%s</div>`, mm(c.Wide), mm(left), texts[k])
		}
		b.WriteString("</div>")
		return template.HTML(b.String()) // #nosec: made of blocks
	})
}

// Stack is blocks beneath each other, as one block that stays whole. It takes the section and the
// part of the first.
func Stack(blocks ...Block) Block {
	var out Block
	wholes := make([]Block, len(blocks))
	for k, x := range blocks {
		gap := x.Gap
		if k == 0 {
			gap, out.Section, out.Part, out.Gap = 0, x.Section, x.Part, x.Gap
		}
		wholes[k] = Block{HTML: x.HTML, High: x.High, Gap: gap, Late: x.Late}
		if x.Cut != nil {
			wholes[k].HTML, wholes[k].High = x.Cut.all()
		}
		out.High += gap + wholes[k].High
	}
	return out.made(wholes, func(texts []template.HTML) template.HTML {
		var b strings.Builder
		for k := range wholes {
			put(&b, wholes[k].Gap, wholes[k].High, texts[k])
		}
		return template.HTML(b.String()) // #nosec: made of blocks
	})
}

// made is a block with the HTML that a function makes of those of others: now, or when all pages are
// known where one of them waits for that.
func (b Block) made(of []Block, how func([]template.HTML) template.HTML) Block {
	texts, late := make([]template.HTML, len(of)), false
	for k := range of {
		texts[k], late = of[k].HTML, late || of[k].Late != nil
	}
	if !late {
		b.HTML = how(texts)
		return b
	}
	b.Late = func(entries []Entry, pages int) template.HTML {
		now := slices.Clone(texts)
		for k := range of {
			if of[k].Late != nil {
				now[k] = of[k].Late(entries, pages)
			}
		}
		return how(now)
	}
	return b
}

// put writes a block in a box of its height, so that nothing below it is moved.
func put(b *strings.Builder, gap, high unit.Millimetre, text template.HTML) {
	fmt.Fprintf(b, `<div class="block" style="height:%s`, mm(high))
	if gap > 0 {
		fmt.Fprintf(b, `;margin-top:%s`, mm(gap))
	}
	fmt.Fprintf(b, `">%s</div>`+"\n", text)
}

func mm(v unit.Millimetre) string { return unit.Fixed(v, 2) + "mm" }
