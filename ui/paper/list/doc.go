// Package list is what every list of the printed set shares: a table with its columns, each list
// defined once as columns (head, how its cells stand, the cell of a row), and the words for what
// stands in many of them (an end of a wire, a diameter with its band, how a connector is clocked).
// Pages, cards, faces and files are made of it; it knows no page and no file.
package list
