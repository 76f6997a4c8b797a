package words

import (
	"strings"
)

// letterRows are capitals and figures as five rows of three cells, read from across a
// bench; a rune that has none is left out.
var letterRows = map[rune]string{
	'A': ".#.#.#####.##.#", 'B': "##.#.###.#.###.", 'C': ".###..#..#...##", 'D': "##.#.##.##.###.", 'E': "####..##.#..###",
	'F': "####..##.#..#..", 'G': ".###..#.##.#.##", 'H': "#.##.#####.##.#", 'I': "###.#..#..#.###", 'J': "..#..#..##.#.#.",
	'K': "#.##.###.#.##.#", 'L': "#..#..#..#..###", 'M': "#.########.##.#", 'N': "##.#.##.##.##.#", 'O': ".#.#.##.##.#.#.",
	'P': "##.#.###.#..#..", 'Q': ".#.#.##.###..##", 'R': "##.#.###.#.##.#", 'S': ".###...#...###.", 'T': "###.#..#..#..#.",
	'U': "#.##.##.##.####", 'V': "#.##.##.##.#.#.", 'W': "#.##.########.#", 'X': "#.##.#.#.#.##.#", 'Y': "#.##.#.#..#..#.",
	'Z': "###..#.#.#..###",
	'0': "####.##.##.####", '1': ".#.##..#..#.###", '2': "##...#.#.#..###", '3': "###..#.##..####", '4': "#.##.####..#..#",
	'5': "####..##...###.", '6': ".###..####.####", '7': "###..#.#..#..#.", '8': "####.#####.####", '9': "####.####..###.",
	' ': "...............", '.': ".............#.", '-': "......###......", '/': "..#..#.#.#..#..", ':': "....#.....#....",
	'+': "....#.###.#....",
	'(': ".#.#..#..#...#.", ')': ".#...#..#..#.#.", '_': "............###", '=': "...###...###...", '*': "...#.#.#.#.#...",
	',': "..........#.#..", '&': ".#.#.#.#.#.####", '#': "#.#####.#####.#", '\'': ".#..#..........", '~': "......##..##...",
}

// letterWide is the cells of one large letter with the gap behind it.
const letterWide = 4

// Letters draws a line of capitals: three rows of half blocks, or five of # where only
// plain characters are to be had. Nil where it does not fit w cells.
func Letters(text string, w int, ascii bool) []string {
	var glyphs []string
	for _, r := range strings.ToUpper(text) {
		if g, ok := letterRows[r]; ok {
			glyphs = append(glyphs, g)
		}
	}
	if len(glyphs) == 0 || len(glyphs)*letterWide > w {
		return nil
	}
	lit := func(g string, x, y int) bool { return y < 5 && g[y*3+x] == '#' }
	rows := 3
	if ascii {
		rows = 5
	}
	out := make([]string, rows)
	for k := range out {
		var b strings.Builder
		for _, g := range glyphs {
			for x := range 3 {
				switch {
				case ascii && lit(g, x, k):
					b.WriteByte('#')
				case ascii:
					b.WriteByte(' ')
				case lit(g, x, 2*k) && lit(g, x, 2*k+1):
					b.WriteRune('█')
				case lit(g, x, 2*k):
					b.WriteRune('▀')
				case lit(g, x, 2*k+1):
					b.WriteRune('▄')
				default:
					b.WriteByte(' ')
				}
			}
			b.WriteByte(' ')
		}
		out[k] = strings.TrimRight(b.String(), " ")
	}
	return out
}
