package listtest

import (
	"encoding/csv"
	"fmt"
	"strings"
	"testing"
)

// Large is a list as long as any that is met, in one of the shapes that people give them: blocks of rows, each below a title of its
// own where it has one, its headings first.
type Large struct {
	Shape  string
	Blocks []LargeBlock
}

// LargeBlock is one table of it.
type LargeBlock struct {
	Title string // "" for none
	Rows  [][]string
}

// perPlug is how many cavities each connector of a large list has, but for those of a connector a row.
const perPlug = 50

// LargeLists are lists of n rows each, one for every shape.
func LargeLists(n int) []Large {
	both := LargeBlock{Rows: [][]string{strings.Split("Wire,From,Pin,To,Pin,Gauge,Colour,Length,Current,Signal,Notes", ",")}}
	ends := LargeBlock{Rows: [][]string{strings.Split("Wire,From,To,Size,Colour,Signal", ",")}}
	pins := LargeBlock{Rows: [][]string{strings.Split("Connector,Pin,Signal,Gauge,Colour", ",")}}
	devices := LargeBlock{Rows: [][]string{strings.Split("Connector,Pin,Signal,Gauge,Colour", ",")}}
	var blocks []LargeBlock
	for i := range n {
		plug, pin, net := i/perPlug, fmt.Sprint(i%perPlug+1), fmt.Sprint("Net ", i%(n/2)) // a net has two cavities
		both.Rows = append(both.Rows, []string{fmt.Sprint("W", i), fmt.Sprint("P", i%20), fmt.Sprint(i / 20), fmt.Sprint("DEV", 20+i%20),
			fmt.Sprint(i / 20), "22 AWG", "white/blue", fmt.Sprint(300+i%700, " mm"), "0.5 A", fmt.Sprint("Signal ", i),
			fmt.Sprint("2x24 shielded, note ", i)})
		ends.Rows = append(ends.Rows, []string{fmt.Sprint("W", i), fmt.Sprintf("P%d:%s", plug, pin), fmt.Sprintf("Q%d:%d", i/40, i%40+1),
			"22 AWG", "red", fmt.Sprint("signal ", i)})
		pins.Rows = append(pins.Rows, []string{fmt.Sprint("J", plug), pin, net, "22 AWG", "red"})
		devices.Rows = append(devices.Rows, []string{fmt.Sprint("Device number ", i), "1", fmt.Sprint("Net ", i), "22 AWG", "red"})
		if i%perPlug == 0 {
			blocks = append(blocks, LargeBlock{fmt.Sprint("Connector J", plug), [][]string{strings.Split("Pin,Signal,Gauge,Colour", ",")}})
		}
		last := &blocks[len(blocks)-1]
		last.Rows = append(last.Rows, []string{pin, net, "22 AWG", "red"})
	}
	return []Large{{"both ends", []LargeBlock{both}}, {"points", []LargeBlock{ends}}, {"blocks", blocks}, {"pin table", []LargeBlock{pins}},
		{"connectors", []LargeBlock{devices}}}
}

// LargeFile is a large list as one kind of file.
type LargeFile struct {
	Name string // with the ending of its kind
	Data []byte
}

// Files are the list as every kind of file; the workbook with the texts in its cells, and with those that its cells share.
func (l Large) Files(t testing.TB) []LargeFile {
	sheet, _ := l.workbook(false)
	inline := Packed(t, Workbook(sheet))
	sheet, texts := l.workbook(true)
	parts := Workbook(sheet)
	const rels = "xl/_rels/workbook.xml.rels"
	parts[rels] = parts[rels][:len(parts[rels])-len("</Relationships>")] + `<Relationship Id="r2" Type="` + Office +
		`/sharedStrings" Target="sharedStrings.xml"/></Relationships>`
	parts["xl/sharedStrings.xml"] = texts
	return []LargeFile{{"list.csv", l.separated(t, ',')}, {"list.tsv", l.separated(t, '\t')}, {"list.md", l.markdown()},
		{"inline.xlsx", inline}, {"shared.xlsx", Packed(t, parts)}}
}

func (l Large) separated(t testing.TB, comma rune) []byte {
	var b strings.Builder
	w := csv.NewWriter(&b)
	w.Comma = comma
	for k, block := range l.Blocks {
		var rows [][]string
		if k > 0 {
			rows = append(rows, []string{""})
		}
		if block.Title != "" {
			rows = append(rows, []string{block.Title})
		}
		if err := w.WriteAll(append(rows, block.Rows...)); err != nil {
			t.Fatal(err)
		}
	}
	return []byte(b.String())
}

func (l Large) markdown() []byte {
	var b strings.Builder
	for _, block := range l.Blocks {
		if block.Title != "" {
			b.WriteString("\n## " + block.Title + "\n\n")
		}
		for i, cells := range block.Rows {
			b.WriteString("| " + strings.Join(cells, " | ") + " |\n")
			if i == 0 {
				b.WriteString(strings.Repeat("|---", len(cells)) + "|\n")
			}
		}
	}
	return []byte(b.String())
}

// workbook is the sheet of the list, and the texts that its cells share where they do. Whole numbers are numbers, as a spreadsheet
// program writes them.
func (l Large) workbook(share bool) (sheet, texts string) {
	var b, all strings.Builder
	at, line := map[string]int{}, 0
	row := func(cells []string) {
		line++
		fmt.Fprintf(&b, `<row r="%d" spans="1:%d" x14ac:dyDescent="0.25">`, line, len(cells))
		for k, c := range cells {
			n, known := at[c]
			switch {
			case strings.Trim(c, "0123456789") == "":
				fmt.Fprintf(&b, `<c r="%c%d"><v>%s</v></c>`, 'A'+k, line, c)
				continue
			case !share:
				fmt.Fprintf(&b, `<c r="%c%d" t="inlineStr"><is><t>%s</t></is></c>`, 'A'+k, line, c)
				continue
			case !known:
				n = len(at)
				at[c] = n
				all.WriteString("<si><t>" + c + "</t></si>")
			}
			fmt.Fprintf(&b, `<c r="%c%d" s="1" t="s"><v>%d</v></c>`, 'A'+k, line, n)
		}
		b.WriteString("</row>")
	}
	b.WriteString("<worksheet><sheetData>")
	for _, block := range l.Blocks {
		if block.Title != "" {
			line++ // an empty row above it
			row([]string{block.Title})
		}
		for _, cells := range block.Rows {
			row(cells)
		}
	}
	b.WriteString("</sheetData></worksheet>")
	return b.String(), "<sst>" + all.String() + "</sst>"
}
