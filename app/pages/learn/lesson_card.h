#pragma once

#include "app/pictures/marks.h"
#include "app/theme/theme.h"
#include "app/widgets/wrapped.h"

#include <QWidget>

#include <optional>
#include <vector>

class QBoxLayout;
class QKeyEvent;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace rig {

class MarkWidget;

// What is asked, and once it was answered, what was right.
struct LessonAsk
{
    QString count; // which question of how many
    QString question;
    QString situation; // under it
    std::vector<QString> choices;
};

struct LessonTold
{
    MarkShape shape = MarkShape::Done;
    Role role = Role::Ink;
    QString word;
    QString truth;
    QString reason;
};

// One question of a round: an answer is pressed, then how sure it is, and only that answers it; until then
// another answer may be pressed. Then what was right, until Enter goes on. What was typed ahead of a question
// is no answer to it.
class LessonCard : public QWidget
{
    Q_OBJECT

public:
    // The picture stands above the answers; the card takes it over. Null: there is none.
    explicit LessonCard(QWidget* picture, QWidget* parent = nullptr);

    // `takesFocus`: whoever is asked has the focus on what led here. The card takes it, and Tab goes on to
    // the first answer.
    void ask(const LessonAsk& ask, bool takesFocus);
    void tell(const LessonTold& told);
    void setLook(const Look& look);
    bool isAsking() const { return m_isAsking; }
    bool takeKey(QKeyEvent* event);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool focusNextPrevChild(bool next) override;

signals:
    void answered(int choice, bool sure);
    void nextAsked();

private:
    void choose(int choice);
    void showSure();
    void fit();
    WrapButton* button(std::size_t index);
    void bringIntoView(QWidget* part);

    bool m_isAsking = false;
    bool m_isSeen = false; // painted since it was asked: what was typed before is no answer to it
    std::optional<int> m_chosen;
    Look m_look;
    QLabel* m_count = nullptr;
    QLabel* m_question = nullptr;
    QLabel* m_situation = nullptr;
    QBoxLayout* m_beside = nullptr; // picture and answers
    QVBoxLayout* m_choices = nullptr;
    std::vector<WrapButton*> m_buttons;
    QLabel* m_howSure = nullptr;
    QPushButton* m_sure = nullptr;
    QPushButton* m_notSure = nullptr;
    QWidget* m_told = nullptr;
    MarkWidget* m_mark = nullptr;
    QLabel* m_word = nullptr;
    QLabel* m_truth = nullptr;
    QLabel* m_reason = nullptr;
    QPushButton* m_next = nullptr;
};

} // namespace rig
