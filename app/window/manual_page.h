#pragma once

#include "app/pages/aside_page.h"
#include "app/report/manual.h"

class QListWidget;
class QTextBrowser;
class QUrl;

namespace rig {

class PaperBox;
class Prompts;

// The manual, to read and to print. It is no moment of its own: the file's menu leads here, and Esc back to
// where one was.
class ManualPage : public AsidePage
{
    Q_OBJECT

public:
    explicit ManualPage(Prompts& prompts, QWidget* parent = nullptr);

    // "trends.md"; stays where it is when there is no such chapter.
    void openChapter(const QString& name);
    void showAirframe(std::optional<AirframeId>) override {} // it tells of the program
    void setLook(const Look& look) override;

protected:
    void focusInEvent(QFocusEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QWidget* makeList();
    QWidget* makeText();
    QWidget* makeFoot();
    void displayChapter(int row);
    void layOut();
    void follow(const QUrl& link);
    void save();

    Prompts& m_prompts;
    Look m_look;
    std::vector<ManualChapter> m_chapters;
    QListWidget* m_list = nullptr;
    QTextBrowser* m_text = nullptr;
    PaperBox* m_paper = nullptr;
    QString m_shown; // name of the chapter that is laid out,
    int m_width = 0; // in a view of this width
};

} // namespace rig
