//! More than one tab in the same browser.

use crate::Page;
use anyhow::{Context, Result};

impl Page {
    /// Opens the page in one more tab of the same browser, goes there, and waits until it
    /// is ready.
    ///
    /// # Errors
    ///
    /// When the browser opens no tab or the page does not become ready there.
    pub async fn open_tab(&self, hash: &str) -> Result<()> {
        let tab = self.session().new_tab().await?;
        self.session().switch_to_window(tab).await?;
        self.goto(hash).await
    }

    /// Goes to a tab, counted from 0 in the order in which they were opened.
    ///
    /// # Errors
    ///
    /// When there is no such tab.
    pub async fn go_to_tab(&self, index: usize) -> Result<()> {
        let tabs = self.session().windows().await?;
        let tab = tabs.get(index).with_context(|| format!("there is no tab {index}"))?;
        Ok(self.session().switch_to_window(tab.clone()).await?)
    }
}
