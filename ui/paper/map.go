package paper

import (
	"fmt"
	"html"
	"strings"

	"contralay/calc/phase/wires"
)

// The map of a harness, drawn: branches run from left to right as they are walked, lengths
// to scale as far as their words have room.

const (
	mapWide  = 180.0 // mm on paper, the width of A4 and of Letter within their margins
	mapRow   = 5.5   // mm a leaf
	mapTall  = 230.0
	mapLeast = 24.0 // mm that the words of a branch take
)

type mapNode struct {
	id   string
	x, y float64
}

type mapEdge struct {
	branch   int
	from, to int
}

// treeMap is the map as SVG.
func (m maker) treeMap() string {
	nodes, edges := m.placeNodes()
	if len(edges) == 0 {
		return ""
	}
	wide, tall := 0.0, 0.0
	for _, n := range nodes {
		wide, tall = max(wide, n.x), max(tall, n.y)
	}
	sx, sy := (mapWide-30)/max(wide, 1), 1.0
	if tall > mapTall {
		sy = mapTall / tall
	}
	font := min(2.7, 2.7*sy*1.2)
	var b strings.Builder
	fmt.Fprintf(&b,
		`<svg xmlns="http://www.w3.org/2000/svg" class="map" width="%.0fmm" height="%.1fmm" `+
			`viewBox="-3 -6 %.0f %.1f" font-family="sans-serif" font-size="%.2f" role="img" aria-label="map of the harness">`, mapWide,
		tall*sy+14, mapWide, tall*sy+14, font)
	for _, e := range edges {
		a, z := nodes[e.from], nodes[e.to]
		fmt.Fprintf(&b, `<path d="M%.2f %.2fV%.2fH%.2f" fill="none" stroke="#000" stroke-width=".5"/>`, a.x*sx, a.y*sy, z.y*sy, z.x*sx)
		br := &m.h.Branches[e.branch]
		says := br.ID + "  " + long(m.sys, br)
		if len(br.ToleranceMM) == 2 {
			says += " " + m.tolerance(br)
		}
		fmt.Fprintf(&b, `<text x="%.2f" y="%.2f" text-anchor="end">%s</text>`, z.x*sx-1.8, z.y*sy-1, html.EscapeString(says))
	}
	for _, n := range nodes {
		says, shape := n.id, `<circle cx="%.2f" cy="%.2f" r="1.1" fill="#000"/>`
		if t, ok := m.s.Index.Termination[n.id]; ok {
			shape = `<rect x="%.2f" y="%.2f" width="2.6" height="2.6" ` +
				`transform="translate(-1.3 -1.3)" fill="#fff" stroke="#000" stroke-width=".5"/>`
			e := &m.h.Terminations[t]
			says = strings.Join(nonEmpty(says, string(e.Datum.V), m.clock(e)), ", ")
		}
		fmt.Fprintf(&b, shape, n.x*sx, n.y*sy)
		at, y, anchor := n.x*sx+2.4, n.y*sy+1, "start"
		switch _, breakout := m.s.Index.Breakout[n.id]; {
		case n.x == 0:
			at, y = n.x*sx-1.3, n.y*sy+4.6
		case breakout:
			at, y, anchor = n.x*sx-1, n.y*sy+3.2, "end" // under the line that comes in, clear of those that go on
		}
		fmt.Fprintf(&b, `<text x="%.2f" y="%.2f" text-anchor="%s" font-weight="bold">%s</text>`, at, y, anchor, html.EscapeString(says))
	}
	b.WriteString("</svg>")
	return b.String()
}

// placeNodes puts every place where it is drawn: a leaf a row, what branches in the middle
// of what it branches into.
func (m maker) placeNodes() ([]mapNode, []mapEdge) {
	walk := wires.Walked(m.s)
	longest := 1.0
	for i := range m.h.Branches {
		longest = max(longest, float64(m.h.Branches[i].LengthMM))
	}
	var nodes []mapNode
	var edges []mapEdge
	at := map[string]int{}
	next := map[string][]wires.Walk{}
	for _, k := range walk {
		next[k.From] = append(next[k.From], k)
	}
	row := 0.0
	var put func(id string, x float64) int
	put = func(id string, x float64) int {
		n := len(nodes)
		at[id] = n
		nodes = append(nodes, mapNode{id: id, x: x})
		var ys []float64
		for _, k := range next[id] {
			if _, been := at[k.To]; been {
				continue
			}
			step := mapLeast + 30*float64(m.h.Branches[k.Branch].LengthMM)/longest
			to := put(k.To, x+step)
			edges = append(edges, mapEdge{k.Branch, n, to})
			ys = append(ys, nodes[to].y)
		}
		if len(ys) == 0 {
			nodes[n].y = row
			row += mapRow
		} else {
			nodes[n].y = (ys[0] + ys[len(ys)-1]) / 2
		}
		return n
	}
	for _, k := range walk {
		if _, been := at[k.From]; k.Deep == 0 && !been {
			put(k.From, 0)
		}
	}
	return nodes, edges
}
