//! What the parts of a document are, for those who have it read out (ISO 32000-1, 14.8).

use pdf_writer::types::StructRole;
use pdf_writer::{Finish, Name, Pdf, Ref, TextStr};

use super::super::page::{Page, Tag};

/// The name of a tag; `None` for what is not read out.
pub(super) fn role(tag: &Tag) -> Option<Name<'static>> {
    Some(kind(tag)?.to_name())
}

fn kind(tag: &Tag) -> Option<StructRole> {
    Some(match tag {
        Tag::Heading(1) => StructRole::H1,
        Tag::Heading(2) => StructRole::H2,
        Tag::Heading(_) => StructRole::H3,
        Tag::Paragraph => StructRole::P,
        Tag::Cell { is_head: true, .. } => StructRole::TH,
        Tag::Cell { is_head: false, .. } => StructRole::TD,
        Tag::Figure(_) => StructRole::Figure,
        Tag::Artifact => return None,
    })
}

/// Something with a place in the tree: a group of a page, or what holds such.
struct Element {
    id: Ref,
    parent: Ref,
    kind: StructRole,
    alt: Option<String>,
    /// The page and the number of the group there.
    content: Option<(Ref, i32)>,
    children: Vec<Ref>,
}

/// The tree: a document of headings, paragraphs, figures and tables.
pub(super) struct Structure {
    pub(super) root: Ref,
    document: Ref,
    /// By which a reader finds the element of a group.
    parents: Ref,
    elements: Vec<Element>,
    /// Of each page the elements of its groups.
    pages: Vec<Vec<Option<Ref>>>,
    /// The table that goes on, with its last row and that row's number.
    table: Option<(usize, usize, usize)>,
}

impl Structure {
    pub(super) fn new(next: &mut impl FnMut() -> Ref) -> Self {
        let (root, document, parents) = (next(), next(), next());
        let (elements, pages) = (Vec::new(), Vec::new());
        Self { root, document, parents, elements, pages, table: None }
    }

    fn push(&mut self, id: Ref, parent: Ref, kind: StructRole) -> usize {
        self.elements.push(Element {
            id,
            parent,
            kind,
            alt: None,
            content: None,
            children: Vec::new(),
        });
        self.elements.len() - 1
    }

    /// Takes in the groups of a page.
    pub(super) fn add(&mut self, page: &Page, id: Ref, next: &mut impl FnMut() -> Ref) {
        let mut ids = Vec::new();
        for (tag, number) in page.tags.iter().zip(0..) {
            let Some(kind) = kind(tag) else {
                ids.push(None);
                continue;
            };
            let parent = match tag {
                Tag::Cell { row, .. } => self.row(*row, next),
                _ => {
                    self.table = None;
                    self.document
                }
            };
            let own = next();
            let i = self.push(own, parent, kind);
            self.elements[i].content = Some((id, number));
            if let Tag::Figure(alt) = tag {
                self.elements[i].alt = Some(alt.clone());
            }
            if let Some((_, row, _)) = self.table {
                self.elements[row].children.push(own);
            }
            ids.push(Some(own));
        }
        self.pages.push(ids);
    }

    /// The element of a row, of the table that goes on or of a new one.
    fn row(&mut self, number: usize, next: &mut impl FnMut() -> Ref) -> Ref {
        match self.table {
            Some((_, row, known)) if known == number => self.elements[row].id,
            going => {
                let table = match going.filter(|(.., known)| number > *known) {
                    Some((table, ..)) => table,
                    None => self.push(next(), self.document, StructRole::Table),
                };
                let own = next();
                let row = self.push(own, self.elements[table].id, StructRole::TR);
                self.elements[table].children.push(own);
                self.table = Some((table, row, number));
                own
            }
        }
    }

    /// Writes the whole tree.
    pub(super) fn write(&self, pdf: &mut Pdf) {
        let mut root = pdf.indirect(self.root).dict();
        root.pair(Name(b"Type"), Name(b"StructTreeRoot"));
        root.pair(Name(b"K"), self.document);
        root.pair(Name(b"ParentTree"), self.parents);
        root.pair(
            Name(b"ParentTreeNextKey"),
            self.pages.iter().fold(0, |count, _| count + 1),
        );
        root.finish();
        let mut document = pdf.struct_element(self.document);
        document.kind(StructRole::Document).parent(self.root);
        let mut children = document.children();
        for element in self.elements.iter().filter(|e| e.parent == self.document) {
            children.struct_element(element.id);
        }
        children.finish();
        document.finish();
        for element in &self.elements {
            let mut written = pdf.struct_element(element.id);
            written.kind(element.kind).parent(element.parent);
            if let Some(alt) = &element.alt {
                written.alt(TextStr(alt));
            }
            match element.content {
                Some((page, number)) => {
                    written.page(page);
                    written.children().marked_content_id(number);
                }
                None => {
                    let mut children = written.children();
                    for id in &element.children {
                        children.struct_element(*id);
                    }
                }
            }
        }
        let mut parents = pdf.indirect(self.parents).dict();
        let mut numbers = parents.insert(Name(b"Nums")).array();
        for (page, key) in self.pages.iter().zip(0..) {
            numbers.item(key);
            let mut groups = numbers.push().array();
            for group in page {
                match group {
                    Some(id) => groups.item(*id),
                    None => groups.item(pdf_writer::Null),
                };
            }
        }
    }
}
