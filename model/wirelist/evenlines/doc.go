// Package evenlines makes tables of lines without headings that are all built alike: an arrow, the ends that it joins written in one way,
// and what the wire is behind the far end or before the arrow.
//
//	WCU (A1) to Horn (2): horn feed, red, 0,5 mm²        A1: horn feed, red > Horn (2)
//	WCU (A2) to Lamp (1): bow lamp, blue, 1,5 mm²        A2: bow lamp, blue > Lamp (1)
//
// Its words: the build of a line is its arrow, how it writes its near and its far end, and the sign behind the end or the cavity. Every
// line with the arrow must be of one build, and no point of a list of another; what the pieces are is told by all lines together (package
// toldcells). Lines of several builds are left to the readers that take each line by itself.
package evenlines
