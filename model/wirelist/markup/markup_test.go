package markup

import (
	"fmt"
	"slices"
	"strings"
	"testing"
)

// shown is what a text holds: a row of cells as "LINE: a|b", headings behind "#", texts behind "-".
func shown(text string) (all []string) {
	got, _ := Read(text)
	for i := range got.Lines {
		for _, r := range got.Tables[i].Rows {
			lead := ""
			switch {
			case r.Head:
				lead = "#"
			case r.Prose:
				lead = "-"
			}
			all = append(all, fmt.Sprintf("%s%d: %s", lead, r.Line, strings.Join(r.Cells, "|")))
		}
	}
	return all
}

var samples = []struct {
	name, text string
	want       []string
}{
	{"wiki", "{| class=\"x\"\n|+ Lid plug\n! Pin !! colspan=2 | Lamp\n|-\n! !! Wire !! Side\n|-\n" +
		"| 1 || style=\"color:red\" | '''red''' || left\n|-\n" +
		"| 2\n| rowspan=2 | [[Hues|black]]\n| right<br>side\n|-\n| 3\n|\n|}\n",
		[]string{"-2: Lid plug", "#5: Pin|Lamp Wire|Lamp Side", "7: 1|red|left", "9: 2|black|right side", "13: 3|black|"}},
	{"one cell on a line", "[cols=\"1,2\",options=\"header\"]\n|===\n| Pin\n| Lamp\n\n| 1\n| _plus_, on the\nlong side\n| 2\n|\n|===\n",
		[]string{"#3: Pin|Lamp", "6: 1|plus, on the long side", "9: 2|"}},
	{"some cells on a line", ".Lid\n[%header,cols=3*]\n|===\n|Pin 2+|Lamp\n|1 .2+|red |left\n|2 |right\n2*|same |x\n|===\n",
		[]string{"-1: Lid", "#4: Pin|Lamp|Lamp", "5: 1|red|left", "6: 2|red|right", "7: same|same|x"}},
	{"headings by an empty line", "|===\n|Pin |Lamp\n\n|1 |+\n|2 |PSU +\n|===\n", []string{"#2: Pin|Lamp", "4: 1|+", "5: 2|PSU +"}},
	{"commas between rules", ",===\nPin,Lamp\n\n1,\"red, thick\"\n,===\n", []string{"2: Pin|Lamp", "4: 1|red, thick"}},
	{"drawn, rows of lines", "+---+-------+\n| P | Lamp  |\n+===+=======+\n| 1 | plus, |\n|   | long  |\n" +
		"+---+-------+\n| 2 | minus |\n+---+-------+\n",
		[]string{"#2: P|Lamp", "4: 1|plus, long", "7: 2|minus"}},
	{"drawn, a row each line", "+---+-------+\n| P | Lamp  |\n+---+-------+\n| 1 | plus  |\n| 2 | minus |\n+---+-------+\n",
		[]string{"#2: P|Lamp", "4: 1|plus", "5: 2|minus"}},
	{"drawn with boxes", "┌───┬───────┐\n│ P │ Lamp  │\n├───┼───────┤\n│ 1 │ plus  │\n│ 2 │ minus │\n└───┴───────┘\n",
		[]string{"#2: P|Lamp", "4: 1|plus", "5: 2|minus"}},
	{"drawn, cells over others", "+---+-------+\n| P | Lamp  |\n|   +---+---+\n|   | A | B |\n+===+===+===+\n" +
		"| 1 | r | x |\n+---+   +---+\n| 2 |   | y |\n" +
		"+---+---+---+\n", []string{"#4: P|Lamp A|Lamp B", "6: 1|r|x", "8: 2|r|y"}},
	{"between rules", "===  ======  ====\nPin  Lamp    Hue\n===  ======  ====\n1    plus,   red\n     long\n" +
		"2            blue\n===  ======  ====\n",
		[]string{"#2: Pin|Lamp|Hue", "4: 1|plus, long|red", "6: 2||blue"}},
	{"between rules, written once", "===  ===  ====\nBox  Pin  Hue\n===  ===  ====\nX1   1    red\n     2    blue\n" +
		"X2   1    grey\n===  ===  ====\n",
		[]string{"#2: Box|Pin|Hue", "4: X1|1|red", "5: |2|blue", "6: X2|1|grey"}},
	{"between rules, over several", "===  ===  ====\n     Lamp\n---  ---------\nPin  Way  Hue\n===  ===  ====\n" +
		"1    A    red\n2    B    blue\n===  ===  ====\n",
		[]string{"#4: Pin|Lamp Way|Lamp Hue", "6: 1|A|red", "7: 2|B|blue"}},
	{"a list", ".. list-table:: Lid\n   :header-rows: 1\n\n   * - Pin\n     - Lamp\n   * - 1\n     - plus,\n       long\n\nText\n",
		[]string{"-1: Lid", "#4: Pin|Lamp", "6: 1|plus, long"}},
	{"values in a text", ".. csv-table::\n   :header: \"Pin\", \"Lamp\"\n\n   1, \"plus, long\"\n   2, minus\n",
		[]string{"#2: Pin|Lamp", "4: 1|plus, long", "5: 2|minus"}},
	{"an outline", "|-----+------|\n| Pin | Lamp |\n| <r> | <l>  |\n|-----+------|\n| 1 | =plus= |\n|---+---|\n| 2 | minus |\n",
		[]string{"#2: Pin|Lamp", "5: 1|plus", "7: 2|minus"}},
	{"an outline with groups", "| No | Box |     | Hue |\n|    | Plug | Pin |  |\n|--+--+--+--|\n| 1 | X1 | 2 | red |\n",
		[]string{"#2: No|Box Plug|Box Pin|Hue", "4: 1|X1|2|red"}},
	{"two bars", "||Pin||Lamp||\n|1|{color:red}red{color}|\n|2|*black*|\n", []string{"#1: Pin|Lamp", "2: 1|red", "3: 2|black"}},
	{"two bars everywhere", "||= Pin =||= Lamp =||\n|| 1 || red ||\n", []string{"#1: Pin|Lamp", "2: 1|red"}},
	{"a low line", "|_. Pin |_. Lamp |_. Hue |\n|1 |\\2. red |\n|2 |/2. minus |blue |\n|3 |grey |\n",
		[]string{"#1: Pin|Lamp|Hue", "2: 1|red|", "3: 2|minus|blue", "4: 3|minus|grey"}},
	{"roofs", "^ Pin ^ Lamp ^\n| 1 | red |\n| 2 | ::: |\n", []string{"#1: Pin|Lamp", "2: 1|red", "3: 2|red"}},
	{"equality signs", "|=Pin|=Lamp|\n|1|red|\n", []string{"#1: Pin|Lamp", "2: 1|red"}},
	{"tags in one line", "<table><tr><th>Pin<th>Lamp<tr><td>1<td>&#x1F7E5; red<tr><td>2<td>a &lt; b</table><p>End</p>",
		[]string{"#1: Pin|Lamp", "1: 1|🟥 red", "1: 2|a < b", "-1: End"}},
	{"tags on lines", "<TABLE\n border=1>\n<!-- <tr><td>x -->\n<tr>\n<th colspan=3>Lid\n" +
		"<tr><th rowspan=2>Pin</th><th colspan=\"2\">Lamp</th></tr>\n" +
		"<tr><th>Way</th><th>Hue</th></tr>\n<tr>\n<td>1</td>\n<td rowspan='2'>A</td>\n<td>red<br>\n<small>thin</small></td>\n</tr>\n" +
		"<tr><td>2</td><td>1.5 mm<sup>2</sup></td></tr>\n</TABLE>\n",
		[]string{"-5: Lid", "#7: Pin|Lamp Way|Lamp Hue", "9: 1|A|red (thin)", "14: 2|A|1.5 mm2"}},
}

func TestRead(t *testing.T) {
	for _, s := range samples {
		if got := shown(s.text); !slices.Equal(got, s.want) {
			t.Errorf("%s:\n%q\nwant\n%q", s.name, got, s.want)
		}
	}
}

// What is no table of these stays what it is, to the letter.
func TestNoTable(t *testing.T) {
	for _, text := range []string{
		"a,b\n1,2\n", "| Pin | Lamp |\n|---|---|\n| 1 | red |\n", "a||b\n1||2\n", "Box <-> lid, 5 < 6, <1 A\n" +
			"", "+------+\n| LAMP |\n+------+\n",
		"Lid\n===\n\ntext\n", "== a ==\n", "x = y == z\n", "Pin  Lamp\n===  ====\n1    red\n", "|1|2|\n",
	} {
		if got, ok := Read(text); ok && len(got.Tables) > 0 {
			t.Errorf("%q: %+v", text, got)
		}
	}
}

// Headings come out as Markdown has them, and what no page shows is gone.
func TestHeadings(t *testing.T) {
	for _, c := range [][2]string{
		{"== Box ==\n{|\n| a || b\n|-\n| 1 || 2\n|}\n", "## Box"}, {"== Box\n\n|===\n|a |b\n|1 |2\n|===\n", "## Box"},
		{"h3. Box\n\n||a||b||\n|1|2|\n", "### Box"}, {"Box\n~~~\n\n===  ===\na    b\n===  ===\n1    2\n===  ===\n", "### Box"},
		{"<h2 id=\"q\">Box <i>one</i></h2>\n<table><tr><td>a<td>b</table>", "## Box one"},
		{"<li>one</li>\n<p>two</p>", "- one"}, {"<script>x = 1</script>\n<p>two</p>", ""},
	} {
		if got, _ := Read(c[0]); got.Lines[0] != c[1] {
			t.Errorf("%q: %q, want %q", c[0], got.Lines[0], c[1])
		}
	}
}

// Any end of a text is a text.
func TestCut(t *testing.T) {
	for _, s := range samples {
		for k := range s.text {
			got, ok := Read(s.text[:k])
			if ok && len(got.Lines) != strings.Count(s.text[:k], "\n")+1 {
				t.Fatalf("%s: %d lines of %q", s.name, len(got.Lines), s.text[:k])
			}
			_, _ = Read(s.text[k:])
		}
	}
}

func FuzzRead(f *testing.F) {
	for _, s := range samples {
		f.Add(s.text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		got, ok := Read(text)
		for at, table := range got.Tables {
			if !ok || table.Lines < 1 || at+table.Lines > len(got.Lines) {
				t.Fatalf("a table of %d lines at %d of %d", table.Lines, at, len(got.Lines))
			}
		}
	})
}
