#pragma once

#include "app/pages/page.h"
#include "app/pages/questions/questions_view.h"
#include "app/theme/theme.h"

#include <QWidget>

#include <map>

class QFrame;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace rig {

class CloseForm;
class MarkWidget;

// One question: its story, whom to call, and while it is open the form that closes it. What is typed stays
// with its question.
class QuestionPanel : public QWidget
{
    Q_OBJECT

public:
    explicit QuestionPanel(QWidget* parent = nullptr);

    void display(const QuestionsView& view, const QuestionRow& row);
    void setLook(const Look& look);
    void openForm();
    // What became of an attempt to close it.
    void showLacks(const std::vector<CloseLack>& lacks);
    void showResult(const QString& sentence);
    void forgetTyped(QuestionId question);
    // What is typed in the form or was put aside, and is not saved.
    bool hasTyped() const;
    // Of questions that the form does not hold now.
    std::vector<TypedAside> typedAside() const;

signals:
    void closeAsked(rig::QuestionId question, const rig::CloseEntry& entry);
    void formPutAside();

private:
    void buildStory(QVBoxLayout* layout);
    void buildClosing(QVBoxLayout* layout);
    void showForm(bool shown);
    void takeForm();
    void keepTyped();

    // What was typed at a question, and its title.
    struct Typed
    {
        CloseEntry entry;
        QString about;
    };

    QuestionId m_question;
    std::map<QuestionId, Typed> m_typed;
    std::optional<QuestionId> m_inForm; // whose words stand there, seen or not
    bool m_isFormOpen = false;

    MarkWidget* m_mark = nullptr;
    QLabel* m_title = nullptr;
    QLabel* m_state = nullptr;
    QLabel* m_result = nullptr;
    QLabel* m_story = nullptr;
    QLabel* m_foundLabel = nullptr;
    QLabel* m_found = nullptr;
    QLabel* m_doneLabel = nullptr;
    QLabel* m_done = nullptr;
    QFrame* m_callCard = nullptr;
    QLabel* m_call = nullptr;
    QLabel* m_consequence = nullptr;
    QPushButton* m_close = nullptr;
    CloseForm* m_form = nullptr;
};

} // namespace rig
