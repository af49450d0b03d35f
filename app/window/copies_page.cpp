#include "app/window/copies_page.h"

#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/widgets/row_list.h"
#include "app/widgets/wrap_layout.h"
#include "app/window/button_key.h"
#include "app/window/session.h"
#include "app/wording/copy_words.h"
#include "app/wording/problem_words.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace rig {

namespace {

QString nameOf(const KeptCopy& copy)
{
    return QString::fromStdString(copy.path.filename().string());
}

Outcome lookInto(LookedCopy& looked, Session& session, const Clock& clock)
{
    const auto file = StoreFile::open(looked.copy.path.string(), OpenAs::ToLook, clock);
    if (!file)
        return file.problem();
    Problem problem;
    if (!take(file.value()->end(), looked.end, problem) ||
        !take(session.placeOfPrint(shortForm(looked.end.hash)), looked.place, problem))
        return problem;
    return Done{};
}

QFrame* cardAround(QWidget* inside)
{
    auto* card = new QFrame;
    card->setProperty("card", true);
    auto* outer = new QVBoxLayout{card};
    outer->setContentsMargins(1, 1, 1, 1);
    outer->addWidget(new FlowScroll{inside});
    return card;
}

} // namespace

std::vector<LookedCopy> lookAtCopies(Session& session, const Clock& clock)
{
    std::vector<LookedCopy> all;
    for (const KeptCopy& copy : keptCopies(session.file().path())) {
        LookedCopy looked{copy, {}, {}, {}};
        if (const Outcome done = lookInto(looked, session, clock); !done)
            looked.problem = done.problem();
        all.push_back(std::move(looked));
    }
    return all;
}

CopiesPage::CopiesPage(QWidget* parent) : AsidePage{parent}
{
    setObjectName("copies");
    setAccessibleName(CopyWords::heading());
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(14, 14, 14, 14);
    layout->setSpacing(14);
    layout->addWidget(makeList(), 1);
    layout->addWidget(makePanel(), 1);
    connect(m_rows, &RowList::rowChosen, this, &CopiesPage::displayRow);
    connect(m_rows, &RowList::rowOpened, this, [this] { look(); });
}

QWidget* CopiesPage::makeList()
{
    auto* inside = new QWidget;
    auto* rows = new QVBoxLayout{inside};
    rows->setContentsMargins(10, 14, 10, 12);
    m_count = labelOf({}, "section", "copiesCount");
    m_rows = new RowList{"copy", CopyWords::heading()};
    m_rows->setWraps();
    rows->addWidget(labelOf(CopyWords::heading(), "label"));
    rows->addWidget(m_count);
    rows->addWidget(m_rows);
    rows->addWidget(labelOf(CopyWords::listKeys(), "soft"));
    rows->addStretch(1);
    return cardAround(inside);
}

QWidget* CopiesPage::makePanel()
{
    auto* inside = new QWidget;
    auto* layout = new QVBoxLayout{inside};
    layout->setContentsMargins(28, 20, 28, 20);
    layout->setSpacing(10);
    m_title = labelOf({}, "title", "copyTitle");
    m_file = labelOf({}, "soft", "copyFile");
    m_end = labelOf({}, "body", "copyEnd");
    m_place = labelOf({}, "body", "copyPlace");
    for (QLabel* label : {m_title, m_file, m_end, m_place})
        layout->addWidget(label);
    m_buttons = new QWidget;
    auto* buttons = new WrapLayout{8, false};
    m_buttons->setLayout(buttons);
    const auto add = [&](const QString& text, const QString& hint, const char* name,
                         void (CopiesPage::*pressed)()) {
        QPushButton* button = buttonOf(text, name);
        button->setToolTip(hint);
        button->setAutoDefault(true);
        connect(button, &QPushButton::clicked, this, pressed);
        buttons->addWidget(button);
        return button;
    };
    add(CopyWords::look(), CopyWords::lookHint(), "lookAtCopy", &CopiesPage::look);
    pressOnControl(Qt::Key_B, add(CopyWords::bringBack(), CopyWords::bringBackHint(), "bringBack",
                                  &CopiesPage::bringBack));
    layout->addWidget(m_buttons);
    layout->addWidget(labelOf(CopyWords::lookHint(), "soft"));
    layout->addWidget(labelOf(CopyWords::bringBackHint(), "soft"));
    layout->addWidget(labelOf(CopyWords::whatEndIs(), "soft"));
    layout->addStretch(1);
    return cardAround(inside);
}

void CopiesPage::setLook(const Look& look)
{
    m_rows->setLook(look);
}

void CopiesPage::display(std::vector<LookedCopy> copies, bool isFileChanged)
{
    m_isFileChanged = isFileChanged;
    m_copies = std::move(copies);
    std::vector<RowText> rows;
    for (const LookedCopy& one : m_copies) {
        const bool opens = !one.problem;
        rows.push_back({opens ? MarkShape::Waiting : MarkShape::HalfDisc, Role::InkSoft,
                        CopyWords::copyOf(one.copy.day, one.copy.bytes),
                        opens ? CopyWords::inList(nameOf(one.copy), one.end)
                              : ProblemWords::sentence(*one.problem, nameOf(one.copy))});
    }
    m_rows->display(rows);
    m_count->setText(CopyWords::count(static_cast<int>(m_copies.size())));
    displayRow(m_rows->chosen());
}

void CopiesPage::displayRow(int row)
{
    const bool isThere = row >= 0 && row < static_cast<int>(m_copies.size());
    m_shown = isThere ? row : -1;
    for (QWidget* part : std::initializer_list<QWidget*>{m_title, m_file, m_end, m_place})
        part->setVisible(isThere);
    m_buttons->setVisible(shown() != nullptr);
    if (!isThere)
        return;
    const LookedCopy& one = m_copies[static_cast<std::size_t>(row)];
    m_title->setText(CopyWords::copyOf(one.copy.day, one.copy.bytes));
    m_file->setText(nameOf(one.copy));
    m_end->setText(one.problem ? ProblemWords::sentence(*one.problem, nameOf(one.copy))
                               : CopyWords::holds(one.end));
    m_place->setVisible(!one.problem);
    m_place->setText(CopyWords::place(one.end, one.place, m_isFileChanged));
}

const LookedCopy* CopiesPage::shown() const
{
    if (m_shown < 0)
        return nullptr;
    const LookedCopy& one = m_copies[static_cast<std::size_t>(m_shown)];
    return one.problem ? nullptr : &one;
}

// The window drops this page while it opens another file: nothing of it is touched after.
void CopiesPage::look()
{
    if (const LookedCopy* one = shown())
        emit lookAsked(KeptCopy{one->copy});
}

void CopiesPage::bringBack()
{
    if (const LookedCopy* one = shown())
        emit bringBackAsked(KeptCopy{one->copy});
}

void CopiesPage::focusInEvent(QFocusEvent* event)
{
    AsidePage::focusInEvent(event);
    m_rows->focusChosen();
}

} // namespace rig
