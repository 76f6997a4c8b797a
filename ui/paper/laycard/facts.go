package laycard

import (
	"fmt"
	"html"
	"html/template"
	"slices"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/laycard/joint"
	"contralay/ui/paper/laycard/section"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// drawingOf is the picture of layers of a branch, with all that lies below them, between two widths.
func drawingOf(c *Card, layers []Layer, least, most unit.Millimetre) section.Picture {
	return section.Of(askedOf(c, layers, least, most))
}

// blockDrawing is the picture of layers in a block, without positions outside: so it is larger,
// and the order beside it has them.
func blockDrawing(c *Card, layers []Layer, least, most unit.Millimetre) section.Picture {
	a := askedOf(c, layers, least, most)
	for k := range a.Pieces {
		a.Pieces[k].Outside, a.Pieces[k].Mark = false, ""
	}
	return section.Of(a)
}

// askedOf is what a picture of layers shows: the bundle up to the last of them, with their numbers.
func askedOf(c *Card, layers []Layer, least, most unit.Millimetre) section.Asked {
	first, last := layers[0].Index, layers[len(layers)-1].Index
	a := section.Asked{OverMM: float64(c.Layers[last].ODMM), Least: float64(least), Most: float64(most)}
	if c.Layers[0].Built != "" {
		a.BuiltMM = float64(c.Layers[0].ODMM)
	}
	kinds := map[sheet.Kind]section.Kind{sheet.OfUnit: section.Unit, sheet.OfSpare: section.Spare, sheet.OfFiller: section.Filler}
	fillers := 0
	for k := range c.Layers[:last+1] {
		for _, r := range c.Layers[k].Rows {
			p := section.Piece{ID: r.ID, X: float64(r.Of.X), Y: float64(r.Of.Y), D: float64(r.Of.D), Kind: kinds[r.Kind], Tracer: r.Tracer,
				InHand: k >= first, Outside: k == last && (k > 0 || len(c.Layers[k].Rows) > 1), Position: r.Position, Mark: r.Splice}
			if r.Kind == sheet.OfFiller {
				fillers++
				p.ID = fmt.Sprintf("filler %d", fillers)
			}
			a.Pieces = append(a.Pieces, p)
		}
	}
	return a
}

// innerFits reports whether layers can share a picture: only pieces of the outermost have their numbers
// outside, or a block has room for all of them inside.
func innerFits(c *Card, layers []Layer) bool {
	return !innerLed(drawingOf(c, layers, leastPicture, page.Wide-columnWide-between), layers) ||
		len(blockDrawing(c, layers, leastPicture, page.Wide-blockTable-blockGap).Leaders) == 0
}

// innerLed reports whether a picture has the number of a piece below the outermost layer outside, where
// its leader would run over others, or lacks numbers.
func innerLed(p section.Picture, layers []Layer) bool {
	inner := map[string]bool{}
	for k := range layers[:len(layers)-1] {
		for _, r := range layers[k].Rows {
			inner[r.ID] = true
		}
	}
	return len(p.Left) > 0 || slices.ContainsFunc(p.Leaders, func(l section.Leader) bool { return inner[l.Of] })
}

// pictureOf is the picture of layers as a block.
func pictureOf(c *Card, layers []Layer, least, most unit.Millimetre) page.Block {
	return pictureBlock(drawingOf(c, layers, least, most), c)
}

func pictureBlock(p section.Picture, c *Card) page.Block {
	b := page.Picture(template.HTML(p.SVG(fmt.Sprintf("%s, seen from %s", c.ID, c.From))), unit.Millimetre(p.H)) // #nosec: SVG escapes
	if len(p.Left) == 0 {
		return b
	}
	says := page.TextIn(fmt.Sprintf("There is no room for %d numbers: go by the list.", len(p.Left)), page.Body, unit.Millimetre(p.W))
	return page.Stack(b, says)
}

// teller gathers what is said beside a picture, in a width.
type teller struct {
	m    list.Maker
	wide unit.Millimetre
	out  []page.Block
}

func (t *teller) say(l page.Letter, gap unit.Millimetre, text string) {
	b := page.TextIn(t.m.Sys.Says(text), l, t.wide)
	b.Gap = gap
	t.out = append(t.out, b)
}

func (t *teller) put(gap unit.Millimetre, b page.Block) {
	b.Gap = gap
	t.out = append(t.out, b)
}

// facts is what is said of the layers of a page beside their picture: for each its hand, lay and OD,
// and what is made before it; where position 1 lies; with the last, what holds for the whole branch.
func facts(m list.Maker, c *Card, layers []Layer, last bool, wide unit.Millimetre) []page.Block {
	t := &teller{m: m, wide: wide}
	for k := range layers {
		l := &layers[k]
		if len(l.Before) > 0 {
			t.put(1, madeFirst(m, l.Before, strings.ToLower(l.Name), wide))
		}
		if len(layers) < compactLayers {
			t.put(1.5, layerTitle(l, wide))
			if svg, high := side(m.Sys, l, c.From, c.To, wide); svg != "" {
				t.put(0.3, page.Picture(svg, high))
			}
			t.put(0, odBox(m, l, wide))
		}
		t.layer(l, c.Stops != "", page.Body)
	}
	if layers[0].Index == 0 && len(layers[0].Rows) > 1 && len(c.Layers) > 1 {
		r := layers[0].Rows[0]
		t.say(page.Body, 1, fmt.Sprintf("In the centre %s lies %s.", r.ID, clockOf(r)))
	}
	switch {
	case c.Start.Says == "":
	case layers[0].Index == 0:
		t.put(1.5, startBlock(c, wide, page.Body))
	default: // the clock is drawn with the first layers
		t.say(page.Body, 1.5, c.Start.Says)
	}
	if last {
		t.finish(c, page.Small, page.Strong)
	}
	return t.out
}

// layer says what belongs to a layer besides its pieces.
func (t *teller) layer(l *Layer, stops bool, letter page.Letter) {
	if l.Built != "" {
		t.say(letter, 0.6, list.Capital(l.Built)+".")
	}
	if l.Bind != "" {
		t.say(letter, 0.6, l.Bind+".")
	}
	if l.Fillers != "" {
		says := "Fillers: " + l.Fillers
		if stops {
			says += "; they stop where the lay stops"
		}
		t.say(letter, 0.6, says+".")
	}
	if l.Spares != "" {
		t.say(letter, 0.6, "Spares: "+l.Spares+".")
	}
}

// finish says what holds for the whole branch, once its last layer is laid.
func (t *teller) finish(c *Card, letter, strong page.Letter) {
	if len(c.After) > 0 {
		var all []string
		for _, i := range c.After {
			all = append(all, t.m.H.Splices[i].ID)
		}
		t.say(strong, 0.6, "When this branch is laid, make "+andOf(all)+".")
	}
	t.say(strong, 0.6, "Finished OD "+c.OD)
	for _, x := range c.Covers {
		says := fmt.Sprintf("%s %s", list.Capital(x.What), x.Part)
		if x.Cut != "-" {
			says += ", cut " + x.Cut
		}
		says += fmt.Sprintf(", from %s to %s, OD %s", x.Start, x.Stop, x.OD)
		if x.Shelf != "" {
			says += ", shelf " + x.Shelf
		}
		t.say(letter, 0.6, says)
	}
	if len(c.Ends) > 0 {
		t.say(letter, 0.6, strings.Join(c.Ends, "; "))
	}
	if c.Bend != "" {
		t.say(letter, 0.6, "Bend no tighter than "+c.Bend)
	}
}

// layerTitle is the name of a layer with its hand large.
func layerTitle(l *Layer, wide unit.Millimetre) page.Block {
	if l.LayMM <= 0 {
		says := l.Name
		if len(l.Rows) > 1 {
			says += ": straight"
		}
		return page.TextIn(says, page.Letter{Point: 12, Bold: true}, wide)
	}
	const high unit.Millimetre = 8
	way := "to the right over the top"
	if l.Hand == model.HandLeft {
		way = "to the left over the top"
	}
	return page.Block{High: high, HTML: template.HTML(fmt.Sprintf( // #nosec: escaped
		`<div style="display:flex;align-items:baseline;height:%s"><span class="p12b">%s</span><span class="p20b" style="margin-left:2.5mm;`+
			`line-height:8mm">%s</span><span class="p10" style="margin-left:2mm">%s</span></div>`, mm(high), html.EscapeString(l.Name),
		html.EscapeString(string(l.Hand)), way))}
}

// odBox is the OD of a layer with a line to write the measured one on.
func odBox(m list.Maker, l *Layer, wide unit.Millimetre) page.Block {
	const high unit.Millimetre = 7
	return page.Block{High: high, Gap: 0.5, HTML: template.HTML(fmt.Sprintf( // #nosec: escaped
		`<div style="display:flex;align-items:flex-end;width:%s;height:%s"><span class="p10b">OD %s %s</span>`+
			`<span class="p9" style="margin-left:2mm">measured</span><span style="flex:1;border-bottom:.3mm solid #000;margin-left:1mm;height:6mm">`+
			`</span></div>`, mm(wide), mm(high), html.EscapeString(l.OD), m.Sys.Name()))}
}

// madeFirst is the splices that are made before a layer, drawn small, as many beside each other as there
// is room for.
func madeFirst(m list.Maker, all []int, layer string, wide unit.Millimetre) page.Block {
	const least unit.Millimetre = 37
	per := max(1, min(len(all), int(wide/least)))
	each := (wide - 2*unit.Millimetre(per-1)) / unit.Millimetre(per)
	var ids []string
	var rows []page.Block
	var joints []joint.Joint
	for k := 0; k < len(all); k += per {
		var columns []page.Column
		for _, i := range all[k:min(k+per, len(all))] {
			j := joint.Of(m, i)
			svg, high := j.Compact(each)
			picture := page.Picture(svg, high)
			blocks := []page.Block{picture}
			if says := j.AlsoSays(); says != "" {
				text := page.TextIn(says, page.Small, each)
				text.Gap = 0
				blocks = append(blocks, text)
			}
			columns = append(columns, page.Column{Wide: each, Blocks: blocks})
			ids = append(ids, j.ID)
			joints = append(joints, j)
		}
		b := page.Beside(2, columns...)
		b.Gap = 1
		rows = append(rows, b)
	}
	text := page.TextIn("Make "+andOf(ids)+" before you lay "+layer+".", page.Letter{Point: 10, Bold: true}, wide)
	out := append([]page.Block{text}, rows...)
	if says := strings.Join(list.NonEmpty(joint.Goes(joints), joint.Over(joints)), " "); says != "" {
		out = append(out, page.TextIn(says, page.Small, wide))
		out[len(out)-1].Gap = 0.4
	}
	return page.Stack(out...)
}

// startBlock says where position 1 lies, with the clock of the connector where that is known.
func startBlock(c *Card, wide unit.Millimetre, l page.Letter) page.Block {
	const rose unit.Millimetre = 19
	if !c.Start.Key.Set && !c.Start.Boot.Set || wide < 50 {
		return page.TextIn(c.Start.Says, l, wide)
	}
	clock := page.Block{HTML: template.HTML(c.Start.rose(float64(rose))), High: rose} // #nosec: numbers alone
	return page.Beside(2, page.Column{Wide: rose, Blocks: []page.Block{clock}},
		page.Column{Wide: wide - rose - 2, Blocks: []page.Block{page.TextIn(c.Start.Says, l, wide-rose-2)}})
}

// rose draws the clock of a connector as it is seen along the bundle: position 1, its key, its boot.
func (s Start) rose(wide float64) string {
	var b strings.Builder
	r, c := wide*0.22, wide/2
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" class="rose" width="%[1]smm" height="%[1]smm" viewBox="0 0 %[1]s %[1]s" `+
		`role="img" aria-label="position 1, key and boot" font-family="%[2]s" font-size="%[3]s" text-anchor="middle">`+
		`<circle cx="%[4]s" cy="%[4]s" r="%[5]s" fill="#fff" stroke="#000" stroke-width=".5"/>`, num(wide), html.EscapeString(section.Family),
		num(smallSize), num(c), num(r))
	fmt.Fprintf(&b, `<circle cx="%[1]s" cy="%[2]s" r="1.9" fill="#000"/><text x="%[1]s" y="%[3]s" fill="#fff" font-weight="bold">1</text>`,
		num(c), num(c-r+2.4), num(c-r+2.4+smallSize*.36))
	hand := func(hour int, says string) {
		turn := float64(hour%12) * 30
		fmt.Fprintf(&b, `<path d="M%[1]s %[2]sl-1.3 -2.2h2.6z" transform="rotate(%[3]s %[1]s %[1]s)"/>`, num(c), num(c-r), num(turn))
		x, y := around(c, r+3.9, turn)
		fmt.Fprintf(&b, `<text x="%s" y="%s">%s</text>`, num(x), num(y+smallSize*.36), says)
	}
	if s.Key.Set {
		hand(s.Key.V, "key")
	}
	if s.Boot.Set && (!s.Key.Set || s.Boot.V != s.Key.V) {
		hand(s.Boot.V, "boot")
	}
	b.WriteString("</svg>")
	return b.String()
}
