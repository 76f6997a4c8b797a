package laycard

import (
	"fmt"
	"html"
	"html/template"
	"math"
	"strings"

	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/laycard/section"
	"contralay/ui/paper/page"
)

// How a layer turns, seen from above: the bundle runs from its from end at the left to its to end at
// the right, so that what goes to the left over the top goes up on the paper.

// sideHigh is the height of the picture of a layer from the side, mm.
const sideHigh unit.Millimetre = 15

// sideScales are the scales a lay may be drawn to, 1 to so many.
var sideScales = []float64{1, 2, 5, 10, 20, 50}

// side draws a layer seen from above in a width, with one lay marked to scale, and its number.
func side(sys unit.System, l *Layer, from, to string, wide unit.Millimetre) (template.HTML, unit.Millimetre) {
	if l.LayMM <= 0 {
		return "", 0
	}
	w := float64(wide)
	scale := sideScales[len(sideScales)-1]
	for _, s := range sideScales {
		if float64(l.LayMM)/s <= w-24 {
			scale = s
			break
		}
	}
	lay, d := float64(l.LayMM)/scale, min(max(float64(l.ODMM)/scale, 5), 6.3)
	const top = 1.5
	mid, x0 := top+d/2, (w-lay)/2
	var b strings.Builder
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" class="side" width="%[1]smm" height="%[2]smm" viewBox="0 0 %[1]s %[2]s" `+
		`role="img" aria-label="%[3]s" font-family="%[4]s" fill="none" stroke="#000" stroke-width=".25">`, num(w), num(float64(sideHigh)),
		html.EscapeString(fmt.Sprintf("the bundle from above: %s, lay %s %s", l.Hand, sys.Length(l.LayMM), sys.Name())),
		html.EscapeString(section.Family))
	fmt.Fprintf(&b, `<path d="M9 %[2]sH%[1]sM9 %[3]sH%[1]s"/>`, num(w-9), num(mid-d/2), num(mid+d/2))
	turn := func(at float64, from, to float64) string { // of a wire that lies lowest on the paper at a place, over parts of a lay
		var p []string
		for k := range 13 {
			part := from + (to-from)*float64(k)/12
			y := math.Cos(2*math.Pi*part) * d / 2
			if l.Hand == model.HandRight {
				y = -y
			}
			p = append(p, num(at+lay*part)+" "+num(mid+y))
		}
		return "M" + strings.Join(p, "L")
	}
	const others = 6 // wires drawn thin beside the one that is followed
	for k := -others; k < 2*others; k++ {
		at := x0 + lay*float64(k)/others
		if k != 0 && at >= 9 && at+lay/2 <= w-9 {
			fmt.Fprintf(&b, `<path d="%s" stroke="#777"/>`, turn(at, 0, 0.5))
		}
	}
	fmt.Fprintf(&b, `<path class="followed" d="%s" stroke-width=".9"/><path d="%s" stroke-width=".5" stroke-dasharray="1 .8"/>`,
		turn(x0, 0, 0.5), turn(x0, 0.5, 1))
	b.WriteString(arrowHead(l.Hand, x0+lay/2, mid, d))
	y := mid + d/2 + 2.6
	fmt.Fprintf(&b, `<path class="dimension" d="M%[1]s %[3]sV%[4]sM%[2]s %[3]sV%[4]sM%[1]s %[5]sH%[2]sm-2 -.8l2 .8l-2 .8M%[1]s %[5]sm2 -.8l-2 .8l2 .8"/>`,
		num(x0), num(x0+lay), num(mid+d/2+.6), num(y+.8), num(y))
	text := func(says string, x, y, size float64, anchor string, bold bool) {
		weight := ""
		if bold {
			weight = ` font-weight="bold"`
		}
		fmt.Fprintf(&b, `<text x="%s" y="%s" font-size="%s" text-anchor="%s" stroke="none" fill="#000"%s>%s</text>`, num(x), num(y), num(size),
			anchor, weight, html.EscapeString(says))
	}
	small := float64(page.Small.Size())
	text(from, 0, mid+small*.36, small, "start", true)
	text(to, w, mid+small*.36, small, "end", true)
	says := fmt.Sprintf("lay %s %s", sys.Length(l.LayMM), sys.Name())
	if scale > 1 {
		says += fmt.Sprintf(" (drawn 1:%s)", num(scale))
	}
	text(says, w/2, y+4.4, float64(page.Sub.Size()), "middle", true)
	b.WriteString("</svg>")
	return template.HTML(b.String()), sideHigh // #nosec: it escapes what it writes
}

// smallSide draws a layer in a row of a table: the bundle from above, one wire over one lay, and the lay
// marked to scale; its number stands beside it.
func smallSide(l *Layer, wide, high float64) string {
	if l.LayMM <= 0 {
		return ""
	}
	scale := sideScales[len(sideScales)-1]
	for _, s := range sideScales {
		if float64(l.LayMM)/s <= wide-3 {
			scale = s
			break
		}
	}
	lay, d := float64(l.LayMM)/scale, high-2.6
	mid, x := d/2+.4, (wide-lay)/2
	var b strings.Builder
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" class="side" width="%[1]smm" height="%[2]smm" viewBox="0 0 %[1]s %[2]s" `+
		`role="img" aria-label="%[3]s" fill="none" stroke="#000" stroke-width=".25"><path d="M0 %[4]sH%[1]sM0 %[5]sH%[1]s"/>`, num(wide),
		num(high), html.EscapeString(string(l.Hand)), num(mid-d/2), num(mid+d/2))
	var front, back []string
	for k := range 13 {
		part := float64(k) / 24
		y := math.Cos(2*math.Pi*part) * d / 2
		if l.Hand == model.HandRight {
			y = -y
		}
		front, back = append(front, num(x+lay*part)+" "+num(mid+y)), append(back, num(x+lay*(part+.5))+" "+num(mid-y))
	}
	fmt.Fprintf(&b, `<path class="followed" d="M%s" stroke-width=".8"/><path d="M%s" stroke-width=".4" stroke-dasharray=".8 .6"/>%s`,
		strings.Join(front, "L"), strings.Join(back, "L"), arrowHead(l.Hand, x+lay/2, mid, d))
	y := high - .8
	fmt.Fprintf(&b, `<path class="dimension" d="M%[1]s %[3]sV%[4]sM%[2]s %[3]sV%[4]sM%[1]s %[5]sH%[2]s"/></svg>`, num(x), num(x+lay),
		num(y-.8), num(high), num(y))
	return b.String()
}

// arrowHead ends the wire that is followed, where it leaves the side that is seen.
func arrowHead(hand model.Hand, x, mid, d float64) string {
	y, s := mid-d/2, 1.0
	if hand == model.HandRight {
		y, s = mid+d/2, -1
	}
	return fmt.Sprintf(`<path d="M%s %sl-2.6 %sM%s %sl-1 %s" stroke-width=".9"/>`, num(x), num(y), num(s*.6), num(x), num(y), num(s*2.4))
}

// num is a number as short as SVG needs it.
func num(v float64) string {
	t := strings.TrimRight(strings.TrimRight(fmt.Sprintf("%.3f", v), "0"), ".")
	if t == "-0" {
		return "0"
	}
	return t
}
