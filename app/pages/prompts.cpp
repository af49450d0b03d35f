#include "app/pages/prompts.h"

#include "app/widgets/question_cover.h"
#include "app/wording/prompt_words.h"

#include <QApplication>
#include <QDialog>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

#include <utility>

namespace rig {

namespace {

constexpr double kShareOfWindow = 0.85; // of its height, that a notice takes at most

// Text above, a place for the answer, buttons below at the right.
struct PromptWindow
{
    PromptWindow(QWidget* parent, const QString& title, const QString& text)
        : dialog{parent}, column{new QVBoxLayout{&dialog}}, buttons{new QHBoxLayout}
    {
        dialog.setWindowTitle(title);
        label = new QLabel{text};
        label->setObjectName("promptText");
        label->setTextFormat(Qt::PlainText); // names in it come from the user
        label->setWordWrap(true);
        label->setMinimumWidth(60 * label->fontMetrics().averageCharWidth());
        column->setContentsMargins(20, 18, 20, 18);
        column->setSpacing(14);
        column->addWidget(label, 1);
        column->addLayout(buttons);
        buttons->setSpacing(8);
        buttons->addStretch(1);
        dialog.setAccessibleDescription(text);
    }

    // What is longer than a window is scrolled through, by keys too.
    QWidget* letScroll(int height)
    {
        auto* area = new QScrollArea;
        area->setObjectName("promptScroll");
        area->setFrameShape(QFrame::NoFrame);
        area->setWidgetResizable(true);
        area->setFocusPolicy(Qt::StrongFocus);
        area->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
        area->setMinimumWidth(label->minimumWidth() + area->verticalScrollBar()->sizeHint().width());
        delete column->replaceWidget(label, area);
        area->setWidget(label);
        dialog.resize(dialog.sizeHint().width(), height);
        return area;
    }

    QPushButton* addButton(const QString& text, QDialog::DialogCode code)
    {
        auto* button = new QPushButton{text};
        button->setAutoDefault(false);
        QObject::connect(button, &QPushButton::clicked, &dialog, [this, code] { dialog.done(code); });
        buttons->addWidget(button);
        return button;
    }

    bool isAccepted() { return dialog.exec() == QDialog::Accepted; }

    QDialog dialog;
    QLabel* label = nullptr;
    QVBoxLayout* column;
    QHBoxLayout* buttons;
};

// "Rigband files (*.rigband)" -> "rigband"
QString suffixIn(const QString& filter)
{
    static const QRegularExpression first{QStringLiteral("\\*\\.([A-Za-z0-9]+)")};
    return first.match(filter).captured(1);
}

QString chosenFile(QFileDialog& dialog)
{
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty())
        return {};
    return dialog.selectedFiles().constFirst();
}

} // namespace

Prompts::~Prompts() = default;

void WindowPrompts::tell(QWidget* parent, const QString& text)
{
    PromptWindow window{parent, PromptWords::noticeTitle(), text};
    QPushButton* understood = window.addButton(PromptWords::understood(), QDialog::Rejected);
    understood->setObjectName("promptClose");
    understood->setDefault(true);
    understood->setFocus();
    const int room = parent ? parent->window()->height() : 0;
    if (room > 0 && window.dialog.sizeHint().height() > kShareOfWindow * room)
        window.letScroll(static_cast<int>(kShareOfWindow * room))->setFocus(); // Enter still closes it
    window.dialog.exec();
}

bool WindowPrompts::confirm(QWidget* parent, const QString& title, const QString& question,
                            const QString& yesText)
{
    PromptWindow window{parent, title, question};
    window.addButton(yesText, QDialog::Accepted)->setObjectName("promptYes");
    QPushButton* leave = window.addButton(PromptWords::leaveAsItIs(), QDialog::Rejected);
    leave->setObjectName("promptLeave");
    leave->setDefault(true);
    leave->setFocus();
    return window.isAccepted();
}

void WindowPrompts::askText(QWidget* parent, const QString& title, const QString& question,
                            const QStringList& offered, std::function<void(const QString&)> take)
{
    QWidget* asker = parent ? parent : QApplication::activeWindow();
    if (asker) // the window owns it
        new QuestionCover{*asker,
                          {title, question, PromptWords::takeText(), PromptWords::leaveAsItIs(), offered},
                          std::move(take)};
}

QString WindowPrompts::askNewFile(QWidget* parent, const QString& filter)
{
    QFileDialog dialog{parent, PromptWords::newFileTitle(), {}, filter};
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(suffixIn(filter));
    return chosenFile(dialog);
}

QString WindowPrompts::askSaveFile(QWidget* parent, const QString& filter, const QString& suggestedName)
{
    QFileDialog dialog{parent, PromptWords::saveFileTitle(), {}, filter};
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(suffixIn(filter));
    dialog.selectFile(suggestedName);
    return chosenFile(dialog);
}

QString WindowPrompts::askOpenFile(QWidget* parent, const QString& filter)
{
    QFileDialog dialog{parent, PromptWords::openFileTitle(), {}, filter};
    dialog.setFileMode(QFileDialog::ExistingFile);
    return chosenFile(dialog);
}

} // namespace rig
