#include "app/window/manual_page.h"

#include "app/pages/paper_box.h"
#include "app/pages/prompts.h"
#include "app/widgets/parts.h"
#include "app/widgets/wrap_layout.h"
#include "app/window/button_key.h"
#include "app/wording/manual_words.h"
#include "app/wording/report_words.h"

#include <QAbstractTextDocumentLayout>
#include <QFrame>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScrollBar>
#include <QTextBrowser>
#include <QTextFrame>
#include <QUrl>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

namespace {

constexpr double kSideMargin = 28;
constexpr double kWidestText = 860; // longer lines are hard to read; both grow with the text

QVBoxLayout* cardColumn(QFrame* card, int margin)
{
    card->setProperty("card", true);
    auto* column = new QVBoxLayout{card};
    column->setContentsMargins(margin, margin, margin, margin);
    column->setSpacing(8);
    return column;
}

} // namespace

ManualPage::ManualPage(Prompts& prompts, QWidget* parent)
    : AsidePage{parent}, m_prompts{prompts}, m_chapters{manualChapters()}
{
    setObjectName("manual");
    setAccessibleName(ManualWords::heading());
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(14, 14, 14, 14);
    layout->setSpacing(14);
    layout->addWidget(makeList(), 1);
    layout->addWidget(makeText(), 3);
    connect(m_list, &QListWidget::currentRowChanged, this, &ManualPage::displayChapter);
    connect(m_list, &QListWidget::itemActivated, this, [this] { m_text->setFocus(); });
    m_list->installEventFilter(this); // what reaches it scrolls the text
    m_text->viewport()->installEventFilter(this);
    connect(m_text, &QTextBrowser::anchorClicked, this, &ManualPage::follow);
    m_list->setCurrentRow(0);
}

QWidget* ManualPage::makeList()
{
    auto* card = new QFrame;
    auto* column = cardColumn(card, 10);
    m_list = new QListWidget;
    m_list->setObjectName("manualChapters");
    m_list->setAccessibleName(ManualWords::chapters());
    m_list->setProperty("chapters", true);
    m_list->setWordWrap(true);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    for (const ManualChapter& chapter : m_chapters)
        m_list->addItem(chapter.title);
    column->addWidget(labelOf(ManualWords::heading(), "section"));
    column->addWidget(m_list, 1);
    column->addWidget(labelOf(ManualWords::keys(), "soft"));
    return card;
}

QWidget* ManualPage::makeText()
{
    auto* card = new QFrame;
    auto* column = cardColumn(card, 1);
    m_text = new QTextBrowser;
    m_text->setObjectName("manualText");
    m_text->setOpenLinks(false); // between chapters only, and nothing outside the program
    m_text->setFrameShape(QFrame::NoFrame);
    m_text->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn); // the width is the same for every chapter
    column->addWidget(m_text, 1);
    column->addWidget(makeFoot());
    return card;
}

QWidget* ManualPage::makeFoot()
{
    auto* foot = new QWidget;
    auto* row = new WrapLayout{8, false};
    row->setContentsMargins(static_cast<int>(kSideMargin), 4, static_cast<int>(kSideMargin), 10);
    foot->setLayout(row);
    QPushButton* save = buttonOf(ManualWords::save(), "saveManual");
    save->setToolTip(ManualWords::saveHint());
    save->setAutoDefault(true);
    pressOnControl(Qt::Key_P, save);
    connect(save, &QPushButton::clicked, this, &ManualPage::save);
    m_paper = new PaperBox{"manualPaper", ManualWords::paper()};
    row->addWidget(save);
    row->addWidget(m_paper);
    return foot;
}

void ManualPage::openChapter(const QString& name)
{
    const auto found = std::ranges::find(m_chapters, name, &ManualChapter::name);
    if (found != m_chapters.end())
        m_list->setCurrentRow(static_cast<int>(found - m_chapters.begin()));
}

void ManualPage::displayChapter(int row)
{
    if (row < 0)
        return;
    const ManualChapter& chapter = m_chapters[static_cast<std::size_t>(row)];
    m_shown = chapter.name;
    m_text->setAccessibleName(chapter.title);
    layOut();
    m_text->verticalScrollBar()->setValue(0);
}

// What stood on top stays there.
void ManualPage::layOut()
{
    QScrollBar* bar = m_text->verticalScrollBar();
    const int top = m_text->cursorForPosition({static_cast<int>(kSideMargin) + 2, 4}).position();
    m_width = m_text->viewport()->width();
    const double scale = m_look.fonts.scale;
    const double width = std::clamp(m_width - 2 * kSideMargin, 100.0, kWidestText * scale);
    QTextDocument& document = *m_text->document();
    layOutManual(document, manualChapter(m_shown), {m_look, width, false});
    QTextFrameFormat frame = document.rootFrame()->frameFormat();
    frame.setLeftMargin(kSideMargin);
    frame.setRightMargin(std::max(kSideMargin, m_width - kSideMargin - width));
    frame.setTopMargin(kSideMargin / 2);
    frame.setBottomMargin(kSideMargin);
    document.rootFrame()->setFrameFormat(frame);
    m_text->moveCursor(QTextCursor::Start);
    document.documentLayout()->documentSize(); // the bar learns how far it goes
    QTextCursor place{&document};
    place.setPosition(std::min(top, document.characterCount() - 1));
    bar->setValue(bar->value() + m_text->cursorRect(place).top());
}

void ManualPage::follow(const QUrl& link)
{
    if (link.isRelative())
        openChapter(link.path());
}

void ManualPage::setLook(const Look& look)
{
    m_look = look;
    layOut();
}

void ManualPage::save()
{
    const QString path = m_prompts.askSaveFile(this, ManualWords::pdfFiles(), manualFileName());
    if (path.isEmpty())
        return;
    if (writeManual(path, m_paper->paper(), ReportWords::program(QCoreApplication::applicationVersion())))
        m_prompts.tell(this, ReportWords::written(path));
    else
        emit problemArose(ReportWords::cannotWrite(path));
}

void ManualPage::focusInEvent(QFocusEvent* event)
{
    AsidePage::focusInEvent(event);
    m_list->setFocus(Qt::OtherFocusReason);
}

bool ManualPage::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_text->viewport() && event->type() == QEvent::Resize &&
        m_text->viewport()->width() != m_width)
        layOut();
    if (watched == m_list && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_PageDown || key == Qt::Key_PageUp) {
            m_text->verticalScrollBar()->triggerAction(key == Qt::Key_PageDown
                                                           ? QAbstractSlider::SliderPageStepAdd
                                                           : QAbstractSlider::SliderPageStepSub);
            return true;
        }
    }
    return AsidePage::eventFilter(watched, event);
}

} // namespace rig
