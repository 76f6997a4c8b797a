package laycard

import (
	"fmt"
	"html"
	"slices"
	"strings"

	wiresphase "contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/ui/paper/laycard/section"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// CardsOf are the cards of all branches, in the order in which they are laid.
func CardsOf(m list.Maker) []Card {
	var out []Card
	for _, w := range wiresphase.Walked(m.S) {
		out = append(out, CardOf(m, w.Branch))
	}
	return out
}

// Section is what the section of the lay cards is called.
const Section = "Lay cards"

// Pages is how every branch is laid: the large ones on pages of their own, then those of which
// several stand on a page, then the table of legs, and the splices. It begins a page.
func Pages(m list.Maker) []page.Block {
	cards := CardsOf(m)
	if len(cards) == 0 {
		return nil
	}
	out := []page.Block{page.Section(Section)}
	out[0].NewPage = true
	for _, says := range Once(m, cards) {
		text := page.Text(says, page.Small)
		text.KeepNext = true
		out = append(out, text)
	}
	var blocks, legs, without []*Card
	large, drawn := false, map[int]bool{}
	for k := range cards {
		c := &cards[k]
		switch b := &m.S.Branches[c.Branch]; {
		case c.Why != "":
			without = append(without, c)
		case leg(b):
			legs = append(legs, c)
		case len(b.Components) > mostBlock:
			pages := pagesOf(m, c, !large)
			large, drawn[c.Branch] = true, true
			out = append(out, pages...)
		default:
			blocks, drawn[c.Branch] = append(blocks, c), true
		}
	}
	out = append(out, packed(m, blocks)...)
	for _, c := range without {
		out = append(out, page.Text(fmt.Sprintf("%s: %s", c.title(), c.Why), page.Body))
	}
	out = append(out, legsOf(m, legs)...)
	return append(out, splicesOf(m, drawn)...)
}

// packed is the blocks of branches of few pieces, in their order, but that one which has room on a page
// that the next has none on comes before it.
func packed(m list.Maker, cards []*Card) []page.Block {
	var all, out []page.Block
	for _, c := range cards {
		all = append(all, blockOf(m, c, c.Layers, true))
	}
	left := unit.Millimetre(0)
	for len(all) > 0 {
		k := slices.IndexFunc(all, func(b page.Block) bool { return b.Gap+b.High <= left })
		if k < 0 {
			k, left = 0, page.BodyHigh+all[0].Gap
			all[0].NewPage = true
		}
		left -= all[k].Gap + all[k].High
		out = append(out, all[k])
		all = slices.Delete(all, k, k+1)
	}
	return out
}

// Once is what holds for all cards, each said once.
func Once(m list.Maker, cards []Card) []string {
	var order, proposed []string
	heavy, dashed, grey, rings := false, false, false, false
	for k := range cards {
		c := &cards[k]
		order = append(order, c.ID)
		if m.S.Branches[c.Branch].Proposed && c.Why == "" {
			proposed = append(proposed, c.ID)
		}
		if leg(&m.S.Branches[c.Branch]) {
			continue
		}
		for n := range c.Layers {
			grey = grey || c.Layers[n].Built != ""
			for _, r := range c.Layers[n].Rows {
				heavy, dashed = heavy || r.Kind == sheet.OfUnit, dashed || r.Kind == sheet.OfSpare
				grey, rings = grey || r.Kind == sheet.OfFiller, rings || r.Tracer
			}
		}
	}
	out := []string{"Lay in this order: " + strings.Join(order, ", ") + "."}
	if len(proposed) > 0 {
		out = append(out, "The file does not lay these branches yet, and the program proposes how: "+shorter(proposed, order)+".")
	}
	var marks []string
	for _, mark := range []struct {
		is   bool
		says string
	}{{heavy, "a heavy line is made up first"}, {dashed, "dashed is a spare"}, {grey, "grey is filler, or tape round the centre"},
		{rings, "two rings are the tracer"}} {
		if mark.is {
			marks = append(marks, mark.says)
		}
	}
	out = append(out, "Lengths go to the centre of a breakout. A card is seen from the end that it names first, along the branch. "+
		"Position 1 lies on top, as the branch lies on the "+
		"board, where the card says nothing else; count on clockwise. The tracer lies at position 1. Wires run straight and sorted "+
		"over the "+
		"zone of a breakout and one diameter before it.")
	out = append(out, "In the pictures bold numbers are wires, thin ones their places in the list. Where a disc is too small for its "+
		"wire, that stands outside and its place inside; pictures of few pieces have the wires alone.")
	says := "Thin grey circles are laid already"
	if len(marks) > 0 {
		says += "; " + strings.Join(marks, "; ")
	}
	return append(out, says+".")
}

// shorter is some branches of all by their ids, or what they are without, whichever is shorter.
func shorter(some, all []string) string {
	without := slices.DeleteFunc(slices.Clone(all), func(id string) bool { return slices.Contains(some, id) })
	switch {
	case len(without) == 0:
		return "all of them"
	case len(without) < len(some)/2:
		return "all but " + andOf(without)
	}
	return andOf(some)
}

// Measures of a page of one layer, mm.
const (
	leastPicture unit.Millimetre = 60
	mostPicture  unit.Millimetre = 180
	between      unit.Millimetre = 4
	mostRows                     = 24 // of a page whose order stands below its picture
	columnWide   unit.Millimetre = 99 // of an order that stands beside its picture
)

// groups are the layers that share a page: while they have no more rows together than stand below a
// picture, and only the outermost has a number outside its disc.
func groups(c *Card) [][]Layer {
	var out [][]Layer
	for k := 0; k < len(c.Layers); {
		end, rows := k+1, len(c.Layers[k].Rows)
		for end < len(c.Layers) && rows+len(c.Layers[end].Rows) <= mostRows {
			if !innerFits(c, c.Layers[k:end+1]) {
				break
			}
			rows += len(c.Layers[end].Rows)
			end++
		}
		out = append(out, c.Layers[k:end])
		k = end
	}
	return out
}

// fewRows is how many rows a group of layers has at most that shares a page with another.
const fewRows = 12

// pagesOf is a branch of many pieces: a page for each group of its layers; two groups of few rows share
// one. The first follows what stands on the page already where first is set.
func pagesOf(m list.Maker, c *Card, first bool) []page.Block {
	all := groups(c)
	var out []page.Block
	for k := 0; k < len(all); k++ {
		follows := first && k == 0
		room := page.BodyHigh
		if follows {
			room -= onceHigh(m)
		}
		var b page.Block
		if k+1 < len(all) && rowsIn(all[k]) <= fewRows && rowsIn(all[k+1]) <= fewRows {
			b = page.Stack(blockOf(m, c, all[k], false), blockOf(m, c, all[k+1], k+2 == len(all)))
			k++
		} else {
			b = layerPage(m, c, all[k], k == len(all)-1, room)
		}
		b.NewPage, b.Part = !follows, c.ID
		out = append(out, b)
	}
	return out
}

// rowsIn is how many pieces layers have together.
func rowsIn(layers []Layer) int {
	n := 0
	for k := range layers {
		n += len(layers[k].Rows)
	}
	return n
}

// namesOf is layers by their names: "the centre and layer 1".
func namesOf(layers []Layer) string {
	var names []string
	for k := range layers {
		names = append(names, strings.ToLower(layers[k].Name))
	}
	return andOf(names)
}

// onceHigh is what the heading of the section and what is said once take of the first page.
func onceHigh(m list.Maker) unit.Millimetre {
	high := page.Section("").High
	for _, says := range Once(m, CardsOf(m)) {
		high += 1 + unit.Millimetre(len(page.Small.Lines(says, page.Wide)))*page.Small.Line()
	}
	return high + 7
}

// layerPage is a page of layers of a branch: the picture with what is said beside it and the order
// below, where that leaves room for every number inside its disc; else the order beside both, as high as
// the page.
func layerPage(m list.Maker, c *Card, layers []Layer, last bool, room unit.Millimetre) page.Block {
	title := page.TextIn(c.title()+": "+namesOf(layers), page.Heading, page.Wide)
	length := page.TextIn(c.length(), page.Body, page.Wide)
	length.Gap = 0
	room -= blockHigh(page.Stack(title, length)) + 3
	inside := unit.Millimetre(section.Inside(askedOf(c, layers, leastPicture, mostPicture)))
	if wide := page.Wide - inside - between; rowsIn(layers) <= mostRows && wide >= factsWide {
		g := gridOf(c, layers, page.Wide, wantedRow, overPage)
		g.headed(m, layers, true)
		told := facts(m, c, layers, last, wide)
		picture := drawingOf(c, layers, leastPicture, inside)
		beside := page.Beside(between, page.Column{Wide: inside, Blocks: []page.Block{pictureBlock(picture, c)}},
			page.Column{Wide: wide, Blocks: told})
		rest := room - beside.High - 3 - (g.high(layers) - g.row*unit.Millimetre(rowsIn(layers)))
		if row := rest / unit.Millimetre(rowsIn(layers)); row >= leastRow {
			g = gridOf(c, layers, page.Wide, min(row, mostRow), overPage)
			g.headed(m, layers, true)
			return page.Stack(title, length, beside, g.block(layers))
		}
	}
	wide := page.Wide - columnWide - between
	if innerLed(drawingOf(c, layers, leastPicture, wide), layers) && len(layers) > 1 {
		return blockOf(m, c, layers, last)
	}
	left := append([]page.Block{pictureOf(c, layers, leastPicture, wide)}, facts(m, c, layers, last, wide)...)
	g := gridOf(c, layers, columnWide, wantedRow, inColumn)
	g.headed(m, layers, true)
	rest := room - (g.high(layers) - g.row*unit.Millimetre(rowsIn(layers)))
	g = gridOf(c, layers, columnWide, min(rest/unit.Millimetre(rowsIn(layers)), mostRow), inColumn)
	g.headed(m, layers, true)
	return page.Stack(title, length, page.Beside(between, page.Column{Wide: wide, Blocks: left},
		page.Column{Wide: columnWide, Blocks: []page.Block{g.block(layers)}}))
}

// Measures of the page of a layer, mm.
const (
	factsWide unit.Millimetre = 66
	wantedRow unit.Millimetre = 4.5
	mostRow   unit.Millimetre = 6.6
)

// length is the length of a branch with what is laid of it.
func (c *Card) length() string { return strings.Join(list.NonEmpty(c.Length, c.Stops), "; ") }

// blockHigh is how high a block is that is not cut.
func blockHigh(b page.Block) unit.Millimetre { return page.Stack(b).High }

// andOf is words as a list.
func andOf(all []string) string {
	if n := len(all); n > 1 {
		return strings.Join(all[:n-1], ", ") + " and " + all[n-1]
	}
	return strings.Join(all, "")
}

// Measures of a block, mm.
const (
	blockGap   unit.Millimetre = 3
	blockTable unit.Millimetre = 84 // width of its order, at least
	blockRow   unit.Millimetre = 4.3
	mostBeside unit.Millimetre = 63 // width of a picture that has order and facts beside it
)

// blockOf is a branch of few pieces: its picture, its order with a head for each layer, and what is said
// of it. Beside a small picture these stand side by side; beside a large one what is said stands below
// the picture or the order, wherever there is room.
func blockOf(m list.Maker, c *Card, layers []Layer, last bool) page.Block {
	picture := blockDrawing(c, layers, leastPicture, page.Wide-blockTable-blockGap)
	wide := unit.Millimetre(picture.W)
	beside := wide <= mostBeside && last // little is said of layers that others follow: their order is wider
	table := page.Wide - wide - blockGap
	if beside {
		table = blockTable
	}
	g := gridOf(c, layers, table, blockRow, inBlock)
	g.headed(m, layers, false)
	order := g.block(layers)
	var b page.Block
	if beside {
		t, below := &teller{m: m, wide: page.Wide - wide - table - 2*blockGap}, &teller{m: m, wide: wide}
		t.head(c, layers)
		t.body(c, layers, last)
		below.out = append(below.out, pictureBlock(picture, c))
		below.joints(layers)
		b = page.Beside(blockGap, page.Column{Wide: wide, Blocks: below.out},
			page.Column{Wide: table, Blocks: []page.Block{order}}, page.Column{Wide: t.wide, Blocks: t.out})
	} else {
		left, right := &teller{m: m, wide: wide}, &teller{m: m, wide: table}
		left.head(c, layers)
		left.out = append(left.out, pictureBlock(picture, c))
		right.out = append(right.out, order)
		below := &teller{m: m, wide: min(wide, table)}
		below.joints(layers)
		below.body(c, layers, last)
		for _, x := range below.out { // the shorter column takes it
			to := left
			if blockHigh(page.Stack(right.out...)) < blockHigh(page.Stack(left.out...)) {
				to = right
			}
			to.out = append(to.out, x)
		}
		b = page.Beside(blockGap, page.Column{Wide: wide, Blocks: left.out}, page.Column{Wide: table, Blocks: right.out})
	}
	b.Part, b.Gap = c.ID, 2.5
	return b
}

// head is the name of a branch with its length, and where position 1 lies where that is its own.
func (t *teller) head(c *Card, layers []Layer) {
	title := c.title()
	if len(layers) < len(c.Layers) {
		title += ": " + namesOf(layers)
	}
	t.say(page.Sub, 0, title)
	t.say(page.Small, 0, c.length())
	if c.Start.Says != "" {
		t.put(0.6, startBlock(c, t.wide, page.Small))
	}
}

// body is what is said of layers in a block, and with the last of the branch.
func (t *teller) body(c *Card, layers []Layer, last bool) {
	for k := range layers {
		t.layer(&layers[k], c.Stops != "", page.Small)
	}
	if last {
		t.finish(c, page.Small, page.Strong)
	}
}

// joints draws the splices that are made before the layers of a block.
func (t *teller) joints(layers []Layer) {
	for k := range layers {
		if l := &layers[k]; len(l.Before) > 0 {
			t.put(1, madeFirst(t.m, l.Before, strings.ToLower(l.Name), t.wide))
		}
	}
}

// headed puts a head above the rows of each layer: with how it turns and its OD; on a page the names
// alone, where what stands beside the picture has the rest, and none above a layer that is alone there.
func (g *grid) headed(m list.Maker, layers []Layer, onPage bool) {
	for k := range layers {
		switch l := &layers[k]; {
		case onPage && len(layers) == 1:
		case onPage && len(layers) < compactLayers:
			g.heads = append(g.heads, g.over(g.headHigh(), html.EscapeString(l.Name)))
		case l.LayMM <= 0:
			g.heads = append(g.heads, g.over(5.5, layerHead(m, l, float64(g.total))))
		default:
			g.heads = append(g.heads, g.over(7, layerHead(m, l, float64(g.total))))
		}
	}
}

// compactLayers is from how many layers on a page their hands and lays stand in the heads of its order.
const compactLayers = 3

// layerHead is a layer in one line above its rows: name, hand and lay, how it turns, and its OD with a
// line to write the measured one on.
func layerHead(m list.Maker, l *Layer, table float64) string {
	says, high := l.Name, unit.Millimetre(5)
	if l.LayMM > 0 {
		high = 6.8
		says += fmt.Sprintf("  %s  lay %s", l.Hand, m.Sys.Length(l.LayMM))
	}
	return fmt.Sprintf(`<div style="display:flex;align-items:center;width:%s;height:%s"><span class="p10b" style="margin-right:2mm">%s</span>`+
		`%s<span class="p10b" style="margin-left:2mm">OD %s</span><span style="flex:1;border-bottom:.3mm solid #000;height:4.4mm;margin:0 1mm">`+
		`</span></div>`, mm(unit.Millimetre(table)-2), mm(high), html.EscapeString(says), smallSide(l, 21, 6.2), html.EscapeString(l.OD))
}
