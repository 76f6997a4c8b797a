package paper

import (
	"fmt"
	"strings"

	"contralay/calc/query/record"
	"contralay/calc/sheet"
	"contralay/model/visible"
	"contralay/ui/paper/customer"
	"contralay/ui/paper/list"
	"contralay/ui/paper/origin"
	"contralay/ui/paper/page"
)

// Customer makes the set that is handed over: of a serial, or without its certificate where Meta has none. It is
// a pure function, as Make is. A serial that the harness does not have is an error that names those it has;
// conforms reports whether the certificate is one.
func Customer(s *sheet.Sheet, meta Meta) (out Sheet, conforms bool, err error) {
	m := makerOf(s)
	c := customer.Set{Maker: m.Maker, Spares: m.spares(), On: meta.On}
	if meta.Serial != "" {
		r, ok := record.Of(s, meta.Serial)
		if !ok {
			return Sheet{}, false, fmt.Errorf("the file has no serial %s. Its serials: %s", visible.Line(meta.Serial), Serials(s))
		}
		c.Record = &r
	}
	meta.File, meta.Shop, meta.Serial = visible.Line(meta.File), visible.Line(meta.Shop), visible.Line(meta.Serial)
	for _, l := range c.Lists() {
		if len(l.Rows) > 0 {
			out.Lists = append(out.Lists, l)
		} else {
			out.Without = append(out.Without, l.File)
		}
	}
	pages, frame, o := page.Lay(c.Blocks()), m.frame(meta), origin.Of(s)
	frame.Kind = "set to hand over"
	if out.Identity, err = identify(o, pages.HTML(frame), out.Lists); err != nil {
		return Sheet{}, false, err
	}
	for k := range out.Lists {
		out.Lists[k].Sheet = strings.Join(list.NonEmpty(fmt.Sprintf("%s rev %s", list.Dash(s.H.Head.Number.V),
			list.Dash(s.H.Head.Revision.V)), list.Word("serial ", meta.Serial), "identity "+out.Identity), ", ")
	}
	frame.Identity = out.Identity
	out.Pages, out.HTML = pages, safe(pages.HTML(frame))
	return out, c.Conforms(), nil
}

// Serials is the serials of a harness, with commas; "none" where none was begun.
func Serials(s *sheet.Sheet) string {
	var all []string
	for k := range s.H.Builds {
		all = append(all, visible.Line(s.H.Builds[k].Serial))
	}
	if len(all) == 0 {
		return "none"
	}
	return strings.Join(all, ", ")
}
