// Package inbars writes small tables that stand in a text by their place on the page alone as tables with bars between their cells, each
// line where it stood. It knows three kinds: tables whose headings stand in two lines, or between stars; tables whose rows have a dash
// between a pin of a connector and the pin that it goes to; and plugs that are drawn as a box with its cavities listed beside it.
//
//	*Probe*     *Target*          Hub        Winch
//	*plug*      *pins*            ---        -----
//	1 (CLK)     BEAT              CN4-2   -  BEAT
//	2 (GND)     GND               CN4-7   -  GND
//
// What it does not do: it says of no column what it is but of the second kind, whose dash says it, and of the third.
package inbars
