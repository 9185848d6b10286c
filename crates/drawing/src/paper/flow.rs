//! What stands on a sheet, one thing below the other, over as many pages as it takes. All of it
//! lies in the room that both papers have, so that both have the same pages.

use noseward_words as texts;

use super::letters::{has_all, width};
use super::page::{MARGIN_MM, Page, PaperSize, ROOM_MM, Tag};
use super::ticks::TO_TICK;
use crate::palette::Colour;
use crate::scene::{Anchor, Item, Path, Point, Scene, Style, Unit};
use crate::width::{bold_px, words_px};

/// Sizes of words in millimetres: of a heading by its level, of all else, and of small print.
const HEADINGS_MM: [f64; 3] = [6.4, 4.6, 3.9];
pub(super) const BODY_MM: f64 = 3.7;
pub(super) const SMALL_MM: f64 = 3.0;
/// From one line to the next, in sizes of its words.
pub(super) const LINE: f64 = 1.32;
/// From the top of a line to the foot of its letters, in their size.
pub(super) const ASCENT: f64 = 0.95;
/// Between paragraphs.
pub(super) const GAP_MM: f64 = 2.2;
/// Between the edge of a cell and its words.
const CELL_MM: f64 = 1.4;
/// What the foot of a page takes.
const FOOT_MM: f64 = 6.0;
pub(super) const HAIR_MM: f64 = 0.2;
/// Nobody writes a number on less.
const WRITE_MM: f64 = 15.0;
/// The line round a caution.
const CAUTION_MM: f64 = 0.7;

/// Things on pages.
#[derive(Clone, Debug)]
pub struct Flow {
    size: PaperSize,
    title: String,
    foot: String,
    rtl: bool,
    pub(super) pages: Vec<Page>,
    /// How far the last page is filled, from the top of its room.
    pub(super) y: f64,
    /// What of the width is written in: all of it, or a column.
    pub(super) slot: Slot,
}

/// A column of a table.
#[derive(Clone, Debug, PartialEq)]
pub struct Column {
    /// What it is called.
    pub head: String,
    /// Its share of the width, beside those of the others.
    pub share: f64,
}

/// A table.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Table {
    /// What it is about; empty for none.
    pub caption: String,
    /// Its columns.
    pub columns: Vec<Column>,
    /// Its rows. The first cell of each is a heading.
    pub rows: Vec<Vec<String>>,
    /// Rows are at least so high, in millimetres: to write in.
    pub row_mm: f64,
}

/// Where on a page, in millimetres of its room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Slot {
    pub(super) x: f64,
    pub(super) width: f64,
}

pub(super) const ALL: Slot = Slot { x: 0.0, width: ROOM_MM.0 };

impl Flow {
    /// How wide the room on a page is, in millimetres.
    pub const WIDTH_MM: f64 = ROOM_MM.0;
    /// How high it is above what stands at the foot, in millimetres.
    pub const HEIGHT_MM: f64 = ROOM_MM.1 - FOOT_MM;

    /// An empty sheet with a title, in the direction of the language in use.
    #[must_use]
    pub fn new(size: PaperSize, title: &str) -> Self {
        let rtl = texts::language().dir == "rtl";
        let pages = vec![Page::blank(size, title)];
        let (title_of, foot) = (title.to_owned(), texts::sheets_foot().into());
        let mut flow =
            Self { size, title: title_of, foot, rtl, pages, y: 0.0, slot: ALL };
        flow.heading(1, title);
        flow
    }

    /// The same with other words at the foot of its pages.
    #[must_use]
    pub fn with_foot(self, words: &str) -> Self {
        Self { foot: words.to_owned(), ..self }
    }

    /// The pages, each with its number and what stands on every sheet at its foot.
    #[must_use]
    pub fn pages(mut self) -> Vec<Page> {
        let of = self.pages.len();
        let base = MARGIN_MM + ROOM_MM.1 - 1.0;
        for i in 0..of {
            let words = texts::sheets_page((i + 1).into(), of.into());
            let width = wide(&words, SMALL_MM, false);
            let (room, mut items) = if of > 1 {
                let slot = Slot { x: ROOM_MM.0 - width, width };
                let number = self.words(slot, base, SMALL_MM, false, &words);
                (ROOM_MM.0 - width - 4.0, vec![number])
            } else {
                (ROOM_MM.0, Vec::new())
            };
            // Beside the number there is one line for it, in whatever language.
            let share = room / wide(&self.foot, SMALL_MM, false);
            let size = SMALL_MM * share.min(1.0);
            items.push(self.words(ALL, base, size, false, &self.foot));
            self.pages[i].push(Tag::Artifact, items);
        }
        self.pages
    }

    /// What is left of the page, in millimetres.
    #[must_use]
    pub fn room_mm(&self) -> f64 {
        Self::HEIGHT_MM - self.y
    }

    /// Goes to another page, unless there is nothing on this one.
    pub fn next_page(&mut self) {
        if self.y > 0.0 {
            self.pages.push(Page::blank(self.size, &self.title));
            self.y = 0.0;
        }
    }

    /// Goes to another page where this one has less room. A column is not parted.
    pub fn keep_mm(&mut self, height: f64) {
        if self.slot == ALL && self.room_mm() < height {
            self.next_page();
        }
    }

    /// Leaves some millimetres free.
    pub fn space(&mut self, mm: f64) {
        self.y += mm;
    }

    /// A heading, with room for what follows.
    pub fn heading(&mut self, level: u8, words: &str) {
        let size = HEADINGS_MM[usize::from(level - 1).min(2)];
        self.keep_mm(size + 18.0);
        if self.y > 0.0 {
            self.space(1.6);
        }
        self.block(Tag::Heading(level), self.slot, size, true, words);
        self.space(GAP_MM / 2.0);
    }

    /// A paragraph.
    pub fn paragraph(&mut self, words: &str) {
        self.block(Tag::Paragraph, self.slot, BODY_MM, false, words);
        self.space(GAP_MM);
    }

    /// A paragraph in small print.
    pub fn small(&mut self, words: &str) {
        self.block(Tag::Paragraph, self.slot, SMALL_MM, false, words);
        self.space(GAP_MM);
    }

    /// Entries of a list, each behind a mark: a box to tick, a number, a dot.
    pub fn list<S: AsRef<str>>(&mut self, entries: &[S], mark: Mark) {
        for (i, entry) in entries.iter().enumerate() {
            let Slot { x: left, width: all } = self.slot;
            let slot = Slot { x: left + 7.0, width: all - 7.0 };
            let lines = wrapped(entry.as_ref(), BODY_MM, false, slot.width);
            let height = lines.len() as f64 * BODY_MM * LINE;
            self.keep_mm(height);
            let top = MARGIN_MM + self.y;
            let base = top + BODY_MM * ASCENT;
            let mut items = match mark {
                Mark::Dot => {
                    let slot = Slot { x: left + 2.5, width: 3.0 };
                    vec![self.words(slot, base, BODY_MM, false, "•")]
                }
                Mark::Number | Mark::NumberFrom(_) => {
                    let first =
                        if let Mark::NumberFrom(first) = mark { first } else { 1 };
                    let slot = Slot { x: left + 0.5, width: 6.0 };
                    let number = format!("{}.", i + first);
                    vec![self.words(slot, base, BODY_MM, true, &number)]
                }
                Mark::Box => {
                    vec![self.frame(Slot { x: left + 1.0, width: 3.4 }, top + 0.5, 3.4)]
                }
            };
            items.extend(self.lines(slot, top, BODY_MM, false, &lines));
            self.page().push(Tag::Paragraph, items);
            self.y += height + 0.9;
        }
        self.space(GAP_MM - 0.9);
    }

    /// A caution: in a frame, and in words.
    pub fn caution(&mut self, words: &str) {
        let name = texts::sheets_caution().as_str();
        let Slot { x, width } = self.slot;
        let slot = Slot { x: x + 4.0, width: width - 8.0 };
        let lines = wrapped(words, BODY_MM, false, slot.width);
        let height = (lines.len() + 1) as f64 * BODY_MM * LINE + 3.0;
        self.keep_mm(height);
        let top = MARGIN_MM + self.y;
        let half = CAUTION_MM / 2.0;
        let inner = Slot { x: self.slot.x + half, width: self.slot.width - CAUTION_MM };
        let mut frame = self.frame(inner, top + half, height - CAUTION_MM);
        if let Item::Path { style, .. } = &mut frame {
            *style = Style::line(Colour::Alert, CAUTION_MM);
        }
        let mut items = vec![frame];
        items.extend(self.lines(slot, top + 1.5, BODY_MM, true, &[name.to_owned()]));
        items.extend(self.lines(
            slot,
            top + 1.5 + BODY_MM * LINE,
            BODY_MM,
            false,
            &lines,
        ));
        self.page().push(Tag::Paragraph, items);
        self.y += height + GAP_MM;
    }

    /// Lines to write on, under a label or without one.
    pub fn ruled(&mut self, label: &str, count: usize, apart_mm: f64) {
        let height = count as f64 * apart_mm;
        self.keep_mm(height + BODY_MM * LINE);
        if !label.is_empty() {
            self.block(Tag::Paragraph, self.slot, BODY_MM, true, label);
        }
        let mut path = Path::default();
        for i in 1..=count {
            let y = MARGIN_MM + self.y + i as f64 * apart_mm;
            let from = self.at(self.slot, y);
            path.line(from, Point { x: from.x + self.slot.width, y });
        }
        let style = Style::line(Colour::Soft, HAIR_MM);
        self.page().push(Tag::Artifact, vec![Item::Path { path, style }]);
        self.y += height + GAP_MM;
    }

    /// Labels beside each other, each with a line to write on; below each other where that would
    /// leave no room to write.
    pub fn fields<S: AsRef<str>>(&mut self, labels: &[S]) {
        let height = 9.0;
        let share = self.slot.width / labels.len().max(1) as f64;
        let least = |label: &S| wide(label.as_ref(), BODY_MM, false) + 6.0 + WRITE_MM;
        if labels.len() > 1 && labels.iter().any(|label| least(label) > share) {
            let (first, rest) = labels.split_at(labels.len().div_ceil(2));
            self.fields(first);
            return self.fields(rest);
        }
        self.keep_mm(height);
        let base = MARGIN_MM + self.y + height - 2.5;
        let mut items = Vec::new();
        let mut path = Path::default();
        for (i, label) in labels.iter().enumerate() {
            let left = self.slot.x + i as f64 * share;
            let slot = Slot { x: left, width: share - 4.0 };
            let taken = wide(label.as_ref(), BODY_MM, false) + 2.0;
            items.push(self.words(slot, base, BODY_MM, false, label.as_ref()));
            let line = Slot { x: slot.x + taken, width: (slot.width - taken).max(0.0) };
            let from = self.at(line, base + 0.8);
            path.line(from, Point { x: from.x + line.width, y: from.y });
        }
        items.push(Item::Path { path, style: Style::line(Colour::Soft, HAIR_MM) });
        self.page().push(Tag::Paragraph, items);
        self.y += height;
    }

    /// A drawing, as wide as it is made for or narrower, in the middle.
    pub fn figure(&mut self, scene: &Scene, most_mm: (f64, f64)) {
        let own_mm = if scene.unit == Unit::Mm { 1.0 } else { 25.4 / 96.0 };
        let most = (most_mm.0.min(self.slot.width), most_mm.1);
        let fits =
            (most.0 / (scene.width * own_mm)).min(most.1 / (scene.height * own_mm));
        let scale = own_mm * fits.min(1.0);
        let (width, height) = (scene.width * scale, scene.height * scale);
        self.keep_mm(height);
        let slot = Slot { x: self.slot.x + (self.slot.width - width) / 2.0, width };
        let at = self.at(slot, MARGIN_MM + self.y);
        let placed = Item::Placed { at, scale, turned_deg: 0.0, scene: scene.clone() };
        // Small pictures have no name: the words beside them say it.
        let tag = match scene.name.as_str() {
            "" => Tag::Artifact,
            name => Tag::Figure(name.to_owned()),
        };
        self.page().push(tag, vec![placed]);
        self.y += height + GAP_MM;
    }

    /// Drawing of one's own in millimetres of the room, with its height and what it shows.
    pub fn drawing(&mut self, name: &str, height: f64, items: Vec<Item>) {
        let (width, unit) = (ROOM_MM.0, Unit::Mm);
        let groups = vec![crate::scene::Group { key: "drawing", items }];
        self.figure(
            &Scene { width, height, unit, name: name.to_owned(), groups },
            (width, height),
        );
    }

    /// A table. It is not parted if one page has room for it; each further page says the
    /// headings again.
    pub fn table(&mut self, table: &Table) {
        self.rows(table, true);
    }

    /// The same, parted wherever the page ends.
    pub fn long_table(&mut self, table: &Table) {
        self.rows(table, false);
    }

    fn rows(&mut self, table: &Table, is_kept: bool) {
        let rows: Vec<Row> =
            table.rows.iter().map(|row| Row::new(table, self.slot, row, false)).collect();
        let heads: Vec<String> = table.columns.iter().map(|c| c.head.clone()).collect();
        let head = Row::new(table, self.slot, &heads, true);
        let caption_mm = if table.caption.is_empty() { 0.0 } else { 7.0 };
        let all_mm = rows.iter().map(|row| row.height).sum::<f64>() + head.height;
        let least = rows.first().map_or(0.0, |row| row.height) + head.height + caption_mm;
        let whole = all_mm + caption_mm;
        let fits = whole < ROOM_MM.1 - FOOT_MM;
        self.keep_mm(if is_kept && fits { whole } else { least });
        if !table.caption.is_empty() {
            self.block(Tag::Paragraph, self.slot, BODY_MM, true, &table.caption);
            self.space(1.0);
        }
        self.row(&head, Some(0));
        for (row, i) in rows.iter().zip(1..) {
            if self.slot == ALL && self.room_mm() < row.height {
                self.next_page();
                self.row(&head, None);
            }
            self.row(row, Some(i));
        }
        self.space(GAP_MM);
    }

    /// A row with its number; without one it is told elsewhere.
    fn row(&mut self, row: &Row, number: Option<usize>) {
        let top = MARGIN_MM + self.y;
        for (i, (slot, lines)) in row.cells.iter().enumerate() {
            let is_head = row.is_head || i == 0;
            let mut frame = self.frame(*slot, top, row.height);
            if let (Item::Path { style, .. }, true) = (&mut frame, row.is_head) {
                *style = style.filled(Colour::Fin);
            }
            let mut items = vec![frame];
            if *lines == [TO_TICK] {
                items.push(self.box_in(*slot, top, row.height));
                let tag = number.map_or(Tag::Artifact, |row| Tag::Cell { row, is_head });
                self.page().push(tag, items);
                continue;
            }
            let inner = Slot { x: slot.x + CELL_MM, width: slot.width - 2.0 * CELL_MM };
            items.extend(self.lines(inner, top + 1.0, row.size, row.is_head, lines));
            let tag = number.map_or(Tag::Artifact, |row| Tag::Cell { row, is_head });
            self.page().push(tag, items);
        }
        self.y += row.height;
    }

    /// Words over as many lines as they need.
    pub(super) fn block(
        &mut self,
        tag: Tag,
        slot: Slot,
        size: f64,
        bold: bool,
        words: &str,
    ) {
        let lines = wrapped(words, size, bold, slot.width);
        let height = lines.len() as f64 * size * LINE;
        self.keep_mm(height.min(60.0));
        let items = self.lines(slot, MARGIN_MM + self.y, size, bold, &lines);
        self.page().push(tag, items);
        self.y += height;
    }

    pub(super) fn page(&mut self) -> &mut Page {
        let last = self.pages.len() - 1;
        &mut self.pages[last]
    }

    /// The left end of a slot on the paper.
    pub(super) fn at(&self, slot: Slot, y: f64) -> Point {
        let left = (self.size.size_mm().0 - ROOM_MM.0) / 2.0;
        let x = if self.rtl { ROOM_MM.0 - slot.x - slot.width } else { slot.x };
        Point { x: left + x, y }
    }

    pub(super) fn lines(
        &self,
        slot: Slot,
        top: f64,
        size: f64,
        bold: bool,
        lines: &[String],
    ) -> Vec<Item> {
        let base = |i: usize| top + size * (ASCENT + LINE * i as f64);
        let line =
            |(i, words): (usize, &String)| self.words(slot, base(i), size, bold, words);
        lines.iter().enumerate().map(line).collect()
    }

    /// A line in the direction of the sheet, though it may begin with a unit, a code or an isolate: who shows
    /// it goes by the first letter outside of these. A number with its unit keeps its own.
    fn directed(&self, words: &str) -> String {
        let is_open = !words.starts_with(is_rtl) && words.contains(is_rtl);
        let mark = if self.rtl && is_open { "\u{200f}" } else { "" };
        format!("{mark}{words}")
    }

    pub(super) fn words(
        &self,
        slot: Slot,
        base: f64,
        size: f64,
        bold: bool,
        words: &str,
    ) -> Item {
        let Point { x, y } = self.at(slot, base);
        let (x, anchor) =
            if self.rtl { (x + slot.width, Anchor::End) } else { (x, Anchor::Start) };
        let (colour, words) = (Colour::Ink, self.directed(words));
        Item::Text { at: Point { x, y }, anchor, words, colour, bold, size }
    }

    pub(super) fn frame(&self, slot: Slot, top: f64, height: f64) -> Item {
        let Point { x, y } = self.at(slot, top);
        let (right, bottom) = (x + slot.width, y + height);
        let corners = [(x, y), (right, y), (right, bottom), (x, bottom)];
        let path = Path::closed(corners.map(|(x, y)| Point { x, y }).into());
        Item::Path { path, style: Style::line(Colour::Ink, HAIR_MM) }
    }
}

/// What stands before an entry of a list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mark {
    /// A dot.
    Dot,
    /// Its number.
    Number,
    /// Its number where the list goes on: that of the first entry.
    NumberFrom(usize),
    /// A box to tick.
    Box,
}

/// A row of a table, its words parted into lines.
struct Row {
    cells: Vec<(Slot, Vec<String>)>,
    height: f64,
    size: f64,
    is_head: bool,
}

impl Row {
    /// The words of cells, and the least that those of heads are made: a head with a word that is
    /// wider than its column is set smaller.
    const SIZE_MM: f64 = SMALL_MM + 0.3;
    const LEAST_MM: f64 = 2.3;

    fn new(table: &Table, slot: Slot, cells: &[String], is_head: bool) -> Self {
        let shares: f64 = table.columns.iter().map(|column| column.share).sum();
        let room = |share: f64| slot.width * share / shares - 2.0 * CELL_MM;
        let mut size = Self::SIZE_MM;
        if is_head {
            for (column, words) in table.columns.iter().zip(cells) {
                let widths = words.split_whitespace().map(|word| wide(word, 1.0, true));
                let widest = widths.fold(0.0, f64::max);
                size =
                    size.min(room(column.share) / widest.max(1e-9)).max(Self::LEAST_MM);
            }
        }
        let mut x = slot.x;
        let mut parted = Vec::new();
        let mut most = 0;
        for (column, words) in table.columns.iter().zip(cells) {
            let width = slot.width * column.share / shares;
            let lines = wrapped(words, size, is_head, room(column.share));
            most = most.max(lines.len());
            parted.push((Slot { x, width }, lines));
            x += width;
        }
        let own = most as f64 * size * LINE + 1.8;
        let height = if is_head { own } else { own.max(table.row_mm) };
        Self { cells: parted, height, size, is_head }
    }
}

/// Whether a letter is written from the right: Hebrew, Arabic and their neighbours.
fn is_rtl(letter: char) -> bool {
    matches!(letter, '\u{590}'..='\u{8ff}')
}

/// How wide words are, in millimetres: in Helvetica, or, in scripts that it lacks, as the page
/// that shows them measures.
pub(crate) fn wide(words: &str, size: f64, bold: bool) -> f64 {
    if has_all(words) {
        return width(words, size, bold);
    }
    let px = if bold { bold_px(words) } else { words_px(words) };
    px * size / crate::scene::TEXT_PX
}

/// A word in pieces that are no wider than there is room.
fn parted(word: &str, size: f64, bold: bool, width: f64) -> Vec<&str> {
    let mut pieces = Vec::new();
    let mut rest = word;
    while wide(rest, size, bold) > width {
        let ends = rest.char_indices().map(|(at, letter)| at + letter.len_utf8());
        let fitting = ends.take_while(|end| wide(&rest[..*end], size, bold) <= width);
        // One letter at least, or this would not end.
        let first = rest.chars().next().map_or(0, char::len_utf8);
        let (piece, after) = rest.split_at(fitting.last().unwrap_or(first));
        pieces.push(piece);
        rest = after;
        if rest.is_empty() {
            return pieces;
        }
    }
    pieces.push(rest);
    pieces
}

/// The words in lines of some width. A word that is wider is parted.
pub(crate) fn wrapped(words: &str, size: f64, bold: bool, width: f64) -> Vec<String> {
    let mut lines = Vec::new();
    for paragraph in words.split('\n') {
        let mut line = String::new();
        let words = paragraph.split(' ').flat_map(|word| parted(word, size, bold, width));
        for word in words {
            let longer =
                if line.is_empty() { word.to_owned() } else { format!("{line} {word}") };
            if !line.is_empty() && wide(&longer, size, bold) > width {
                lines.push(std::mem::replace(&mut line, word.to_owned()));
            } else {
                line = longer;
            }
        }
        lines.push(line);
    }
    lines
}

#[cfg(test)]
mod tests {
    use super::super::inside::{sheet_is_sound, words_of};
    use super::*;

    #[test]
    fn a_word_is_parted_where_it_is_wider_than_its_room() {
        let lines = wrapped("so Donaudampfschifffahrt is", 4.0, false, 20.0);
        assert_eq!(lines.concat().replace(' ', ""), "soDonaudampfschifffahrtis");
        assert!(
            lines.len() > 2 && lines.iter().all(|line| wide(line, 4.0, false) <= 20.0)
        );
        assert_eq!(wrapped("a b", 4.0, false, 0.5), ["a", "b"]);
        assert_eq!(wrapped("a\n\nb c", 4.0, false, 90.0), ["a", "", "b c"]);
    }

    fn table(head: &str, rows: usize) -> Table {
        let column = |head: &str| Column { head: head.into(), share: 1.0 };
        Table {
            columns: vec![column("No."), column(head)],
            rows: (0..rows).map(|i| vec![i.to_string(), "value".into()]).collect(),
            row_mm: 9.0,
            ..Table::default()
        }
    }

    /// The size of the words of a page that say this.
    fn size_of(page: &Page, wanted: &str) -> Option<f64> {
        let items = page.scene.groups.iter().flat_map(|group| &group.items);
        items.into_iter().find_map(|item| match item {
            Item::Text { words, size, .. } => (words == wanted).then_some(*size),
            _ => None,
        })
    }

    #[test]
    fn a_head_that_is_too_wide_is_set_smaller_with_all_of_its_row() {
        let pages = |head: &str| {
            let mut flow = Flow::new(PaperSize::A4, "Heads");
            flow.beside(&[1.0, 3.0], 0.0, &mut |flow, _| flow.table(&table(head, 1)));
            flow.pages()
        };
        let usual = size_of(&pages("short")[0], "No.");
        assert_eq!(usual, Some(Row::SIZE_MM));
        let smaller = size_of(&pages("Vorhergesagtes")[0], "No.").unwrap();
        assert!((Row::LEAST_MM..Row::SIZE_MM).contains(&smaller), "{smaller}");
        assert_eq!(size_of(&pages("Vorhergesagtes")[0], "value"), usual);
    }

    #[test]
    fn every_field_has_room_to_write() {
        let lines = |labels: &[&str]| -> Vec<f64> {
            let mut flow = Flow::new(PaperSize::A4, "Fields");
            flow.fields(labels);
            let page = flow.pages().remove(0);
            let items = page.scene.groups.into_iter().flat_map(|group| group.items);
            let runs = items.filter_map(|item| match item {
                Item::Path { path, .. } => Some(path.runs),
                _ => None,
            });
            runs.flatten().map(|(ends, _)| ends[1].x - ends[0].x).collect()
        };
        let long = "Im Gleichgewicht, von der Nasenspitze aus (mm):";
        for labels in [&["a", "b"][..], &[long, long], &["a", "b", long, "c"]] {
            let lines = lines(labels);
            assert_eq!(lines.len(), labels.len());
            assert!(lines.iter().all(|line| *line >= WRITE_MM), "{labels:?}: {lines:?}");
        }
    }

    /// A table goes to another page whole, a long one as far as there is room.
    #[test]
    fn only_long_tables_are_parted_where_a_page_has_room_for_them() {
        let rows_of_first = |long: bool| {
            let sheet = move |size| {
                let mut flow = Flow::new(size, "Rows");
                flow.space(120.0);
                let table = table("head", 20);
                if long {
                    flow.long_table(&table);
                } else {
                    flow.table(&table);
                }
                flow.pages()
            };
            sheet_is_sound(2, &sheet);
            words_of(&sheet(PaperSize::A4)[..1]).matches("value").count()
        };
        assert_eq!(rows_of_first(false), 0);
        assert_eq!(rows_of_first(true), 12);
    }
}
